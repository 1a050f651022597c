import { crc32 } from '../backup/crc-32';
import { writeValue } from '../backup/value-text';
import type { KeptRow, ListName, Rows } from '../contents';
import { isPlainObject } from '../mend';
import type { Note } from '../note';
import type { Desk } from '../records';
import { isSame } from '../same-value';
import { LISTS, parseRow } from '../stores';
import { joinRows } from './join-rows';

/**
 * What becomes of a change, given what another tab has made of its row meanwhile.
 * - `put`: both are joined. Where both changed the same field, each otherwise, this change stands,
 *   and the other's row is kept as a copy, if there can be two.
 * - `deleted`: the row goes, or has gone.
 * - `stays`: it was to be deleted, and was changed elsewhere.
 * - `gone`: it was changed, and was deleted elsewhere.
 */
export type Settled =
  | {
      readonly kind: 'put';
      readonly row: unknown;
      readonly isClash: boolean;
      readonly copy: Rows[ListName] | null;
    }
  | { readonly kind: 'deleted' }
  | { readonly kind: 'stays'; readonly row: KeptRow }
  | { readonly kind: 'gone' };

/**
 * Settles a change with what is kept. Asked twice, it answers the same.
 * @param raw the row as it is kept; undefined where there is none
 */
export function settleNote({ store, was, row: mine }: Note, raw: unknown): Settled {
  const theirs = parseRow(store, raw);
  if (mine === undefined) {
    if (theirs === undefined || was === undefined || isSame(theirs, was))
      return { kind: 'deleted' };
    return { kind: 'stays', row: theirs };
  }
  if (raw === undefined && was !== undefined) return { kind: 'gone' };
  if (theirs === undefined || was === undefined) return put(mine);
  const { row, isClash } = joinRows<unknown>(was, mine, theirs);
  const joined = parseRow(store, row);
  if (joined === undefined) return put(mine);
  if (!isClash) return put(joined);
  if (store !== 'desk') return { ...put(joined), isClash, copy: otherCopy(store, raw) };
  const areDesks = 'heldShot' in joined && 'heldShot' in theirs;
  return { ...put(areDesks ? withHeld(joined, was, theirs) : joined), isClash };
}

/**
 * What another tab had made of a row, to be kept beside it. It has the same id whenever it is made,
 * so that it is kept once.
 */
function otherCopy<L extends ListName>(list: L, raw: unknown): Rows[L] | null {
  const { parse, asCopy } = LISTS[list];
  const parsed = parse(raw);
  if (!parsed.ok) return null;
  const row = parsed.record;
  return asCopy(row, `${row.id}-${crc32(new TextEncoder().encode(writeValue(row)))}`);
}

/** Of desks there is one: where both tabs changed the shot, the other's is held, if none is yet. */
function withHeld(joined: Desk, was: unknown, theirs: Desk): Desk {
  const before = isPlainObject(was) ? was.shot : undefined;
  const { isClash } = joinRows<unknown>(before, joined.shot, theirs.shot);
  return isClash ? { ...joined, heldShot: joined.heldShot ?? theirs.shot } : joined;
}

function put(row: unknown) {
  return { kind: 'put', row, isClash: false, copy: null } as const;
}
