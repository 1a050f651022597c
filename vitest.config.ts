import { preact } from '@preact/preset-vite';
import { defineConfig } from 'vitest/config';

const FAST = ['unit', 'property', 'truth', 'store', 'architecture', 'docs'];

/** Components (`*.test.tsx`) get a DOM; everything else plain Node. */
export default defineConfig(({ mode }) => ({
  plugins: [preact()],
  test: {
    projects: [
      {
        extends: true,
        // A project does not take the mode of the command by itself, and a soak hangs on it.
        mode,
        test: {
          name: 'unit',
          include: FAST.map((folder) => `tests/${folder}/**/*.test.ts`),
          environment: 'node',
          sequence: { groupOrder: 0 },
        },
      },
      {
        extends: true,
        test: {
          name: 'dom',
          include: ['tests/unit/**/*.test.tsx'],
          environment: 'happy-dom',
          sequence: { groupOrder: 0 },
        },
      },
      {
        extends: true,
        test: {
          name: 'build',
          include: ['tests/build/**/*.test.ts'],
          environment: 'node',
          sequence: { groupOrder: 1 },
        },
      },
      {
        extends: true,
        test: {
          name: 'e2e',
          include: ['tests/e2e/**/*.test.ts'],
          environment: 'node',
          globalSetup: ['tests/harness/e2e-setup.ts'],
          // One browser at a time: timings on two cores mean nothing otherwise.
          fileParallelism: false,
          testTimeout: 120_000,
          hookTimeout: 120_000,
          sequence: { groupOrder: 2 },
        },
      },
    ],
  },
}));
