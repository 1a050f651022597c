import { readFileSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { join, posix } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { listFiles } from '../architecture/source-tree';
import { buildAnew } from '../harness/build-anew';
import { PATIENCE_MS } from '../harness/patience';
import { bytesOf, shipped } from './dist';

let folder: string | undefined;
afterAll(() => folder && rm(folder, { recursive: true, force: true }));

it(
  'is built to the same bytes again, somewhere else',
  async () => {
    folder = await buildAnew();
    const again = listFiles(folder).map((path) => posix.relative(folder ?? '', path));
    expect(again).toEqual(shipped);
    const different = shipped.filter(
      (file) => !bytesOf(file).equals(readFileSync(join(folder ?? '', file))),
    );
    expect(different).toEqual([]);
  },
  5 * PATIENCE_MS,
);
