import { preact } from '@preact/preset-vite';
import { defineConfig } from 'vitest/config';
import { bundledTests } from './tests/harness/bundled-tests.ts';
import { InTurn } from './tests/harness/in-turn.ts';
import { PATIENCE_MS } from './tests/harness/patience.ts';

const FAST = ['unit', 'property', 'truth', 'store', 'architecture', 'docs'];

/** Tests in a real browser. */
function browserProject(mode: string, name: string, files: object) {
  return {
    extends: true as const,
    mode,
    test: {
      name,
      environment: 'node' as const,
      globalSetup: ['tests/harness/e2e-setup.ts'],
      // The tests of a worker share its browser; what they open in it shares nothing.
      isolate: false,
      expect: { poll: { timeout: PATIENCE_MS } },
      testTimeout: 5 * PATIENCE_MS,
      hookTimeout: 5 * PATIENCE_MS,
      ...files,
    },
  };
}

/** Components (`*.test.tsx`) get a DOM; everything else plain Node. */
export default defineConfig(({ mode }) => ({
  plugins: [preact()],
  test: {
    // Now and then they wait for a browser or a command, so three share two cores.
    maxWorkers: 3,
    sequence: { sequencer: InTurn },
    // Some run a command or a campaign, which on a busy machine takes its time.
    testTimeout: PATIENCE_MS,
    hookTimeout: PATIENCE_MS,
    projects: [
      {
        extends: true,
        // A project does not take the mode of the command by itself, and a soak hangs on it.
        mode,
        plugins: [
          bundledTests(
            FAST.map((folder) => `tests/${folder}`),
            mode,
          ),
        ],
        test: {
          name: 'unit',
          include: FAST.map((folder) => `tests/${folder}/**/*.test.ts`),
          environment: 'node',
          // Each cleans up after itself; loading everything anew for each took half the time.
          isolate: false,
        },
      },
      {
        extends: true,
        test: {
          name: 'dom',
          include: ['tests/unit/**/*.test.tsx'],
          environment: 'happy-dom',
          // A phone's: what is wider shows more at once.
          environmentOptions: { happyDOM: { width: 390, height: 844 } },
          isolate: false,
        },
      },
      {
        extends: true,
        test: {
          name: 'build',
          include: ['tests/build/**/*.test.ts'],
          environment: 'node',
        },
      },
      browserProject(mode, 'e2e', { include: ['tests/e2e/**/*.test.ts'] }),
      browserProject(mode, 'engines', {
        include: ['tests/engines/**/*.test.ts'],
        globalSetup: ['tests/harness/engines-setup.ts'],
        // The first of them wait until the engines have been fetched.
        hookTimeout: 600_000,
      }),
    ],
  },
}));
