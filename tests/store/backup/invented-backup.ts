import { findDigest } from '../../../src/store/backup/backup-format';
import { writeBackup } from '../../../src/store/backup/write-backup';
import { CONTENTS } from './invented-contents';

export const SAVED_AT_MS = 1_800_000_000_000;

/** The backup of the invented contents, and its lines. */
export const TEXT = await writeBackup(CONTENTS, SAVED_AT_MS, findDigest());
export const LINES = TEXT.split('\n');

/** The number of the line on which a row lies. */
export function lineOf(part: string): number {
  const index = LINES.findIndex((line) => line.includes(part));
  if (index < 0) throw new Error(`no line with ${part}`);
  return index + 1;
}
