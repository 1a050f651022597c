import { kitFields } from './kit-fields';
import { isPlainObject, type Mend } from './mend';
import { numberAt } from './number-at';
import { mendBallSet } from './parse-ball-set';
import { mendCloth } from './parse-cloth';
import { mendCue } from './parse-cue';
import { isId } from './parse-named';
import { mendTable } from './parse-table';
import type { ParsedRow } from './parsed-row';
import type { ShelfName, Shelves } from './records';
import type { Repair } from './store-port';

const MENDS: { readonly [S in ShelfName]: Mend<Shelves[S]> } = {
  cues: mendCue,
  cloths: mendCloth,
  balls: mendBallSet,
  tables: mendTable,
};

/**
 * A valid record out of anything found on a shelf, with what had to be mended. Beyond repair is
 * something without fields, without an id, or without a single number of its own: filling all of
 * them in would be inventing a record, not mending one.
 */
export function parseRecord<S extends ShelfName>(shelf: S, raw: unknown): ParsedRow<Shelves[S]> {
  if (!isPlainObject(raw)) return { ok: false, reason: 'not-a-record' };
  const id = raw.id;
  if (!isId(id)) return { ok: false, reason: 'no-id' };
  if (kitFields(shelf).every(({ path }) => numberAt(raw, path) === null)) {
    return { ok: false, reason: 'nothing-readable' };
  }
  const repairs: Repair[] = [];
  const record = MENDS[shelf](raw, '', (field, was, now) => {
    repairs.push({ store: shelf, id, field, was, now });
  });
  return { ok: true, record, repairs };
}
