import { preact } from '@preact/preset-vite';
import { defineConfig } from 'vitest/config';
import { bundledTests } from './tests/harness/bundled-tests.ts';
import { PATIENCE_MS } from './tests/harness/patience.ts';

const FAST = ['unit', 'property', 'truth', 'store', 'architecture', 'docs'];

/** Tests in a real browser: these wait for it now and then, so three share two cores. */
function browserProject(mode: string, name: string, files: object) {
  return {
    extends: true as const,
    mode,
    test: {
      name,
      environment: 'node' as const,
      globalSetup: ['tests/harness/e2e-setup.ts'],
      maxWorkers: 3,
      // The tests of a worker share its browser; what they open in it shares nothing.
      isolate: false,
      expect: { poll: { timeout: PATIENCE_MS } },
      testTimeout: 5 * PATIENCE_MS,
      hookTimeout: 5 * PATIENCE_MS,
      sequence: { groupOrder: 1 },
      ...files,
    },
  };
}

/** Components (`*.test.tsx`) get a DOM; everything else plain Node. */
export default defineConfig(({ mode }) => ({
  plugins: [preact()],
  test: {
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
          maxWorkers: 2,
          // Each cleans up after itself; loading everything anew for each took half the time.
          isolate: false,
          // Some run a command, which on a busy machine takes its time.
          testTimeout: PATIENCE_MS,
          sequence: { groupOrder: 0 },
        },
      },
      {
        extends: true,
        test: {
          name: 'dom',
          include: ['tests/unit/**/*.test.tsx'],
          environment: 'happy-dom',
          maxWorkers: 2,
          isolate: false,
          testTimeout: PATIENCE_MS,
          sequence: { groupOrder: 0 },
        },
      },
      {
        extends: true,
        test: {
          name: 'build',
          include: ['tests/build/**/*.test.ts'],
          environment: 'node',
          maxWorkers: 2,
          sequence: { groupOrder: 0 },
          testTimeout: PATIENCE_MS,
        },
      },
      browserProject(mode, 'e2e', { include: ['tests/e2e/**/*.test.ts'] }),
      browserProject(mode, 'engines', {
        include: ['tests/engines/**/*.test.ts'],
        // These engines start whole browsers, each with several processes.
        maxWorkers: 2,
        sequence: { groupOrder: 2 },
        globalSetup: ['tests/harness/engines-setup.ts'],
        // The first of them wait until the engines have been fetched.
        hookTimeout: 600_000,
      }),
    ],
  },
}));
