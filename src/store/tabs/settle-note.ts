import type { Note } from '../note';
import { parseRow } from '../parse-row';
import type { KeptRow } from './elsewhere';
import { isSame, joinRows } from './join-rows';
import { type OtherCopy, otherCopy, withHeld } from './other-copy';

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
      readonly copy: OtherCopy | null;
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
  if (!('heldShot' in theirs)) return { ...put(joined), isClash, copy: otherCopy(theirs) };
  return { ...put('heldShot' in joined ? withHeld(joined, was, theirs) : joined), isClash };
}

function put(row: unknown) {
  return { kind: 'put', row, isClash: false, copy: null } as const;
}
