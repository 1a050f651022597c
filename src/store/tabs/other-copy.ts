import { crc32 } from '../backup/crc-32';
import { writeValue } from '../backup/write-value';
import { copyName, copyRecord } from '../copy-record';
import { isPlainObject } from '../mend';
import type { Desk } from '../records';
import type { KeptRow } from './elsewhere';
import { joinRows } from './join-rows';

/** A row that is kept beside the one it was. */
export type OtherCopy = Exclude<KeptRow, Desk>;

const WHAT = 'other tab';

/**
 * What another tab had made of a row, to be kept beside it under a name that says so. It has the same
 * id whenever it is made, so that it is kept once. A reading counts once: its copy is struck out.
 */
export function otherCopy(row: OtherCopy): OtherCopy {
  const id = `${row.id}-${crc32(new TextEncoder().encode(writeValue(row)))}`;
  if ('changes' in row) return copyRecord(row, id, [row.name], WHAT);
  if ('name' in row) return { ...row, id, name: copyName(row.name, [row.name], WHAT) };
  return { ...row, id, isStruckOut: true };
}

/** Of desks there is one: where both tabs changed the shot, the other's is held, if none is yet. */
export function withHeld(joined: Desk, was: unknown, theirs: Desk): Desk {
  const before = isPlainObject(was) ? was.shot : undefined;
  const { isClash } = joinRows<unknown>(before, joined.shot, theirs.shot);
  return isClash ? { ...joined, heldShot: joined.heldShot ?? theirs.shot } : joined;
}
