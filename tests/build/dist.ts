import { readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { listFiles } from '../architecture/source-tree';

const FOLDER = 'dist';

/** Every file that ships, as a path within dist. */
export const shipped: readonly string[] = listFiles(FOLDER).map((path) =>
  posix.relative(FOLDER, path),
);

/** A shipped file's bytes. */
export const bytesOf = (file: string): Buffer => readFileSync(join(FOLDER, file));

/** A shipped file's text. */
export const textOf = (file: string): string => bytesOf(file).toString('utf8');
