import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

/** What lies at the top of the project, but for dot-files and what is never kept. */
const TOP_LEVEL = [
  'DEVELOPERS.md',
  'LICENSE',
  'README.md',
  'biome.json',
  'chunks.config.ts',
  'index.html',
  'knip.json',
  'package-lock.json',
  'package.json',
  'public',
  'src',
  'tests',
  'tighten.config.ts',
  'tsconfig.json',
  'vite.config.ts',
  'vitest.config.ts',
];

it('has nothing at its top but what is named', () => {
  const unkept = readFileSync('.gitignore', 'utf8').split(/\/?\n/);
  const found = readdirSync('.').filter(
    (name) =>
      !name.startsWith('.') &&
      !unkept.some(
        (line) => line === name || (line.startsWith('*') && name.endsWith(line.slice(1))),
      ),
  );
  expect(found.sort()).toEqual(TOP_LEVEL);
});
