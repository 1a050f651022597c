import type { ParsedRow } from './contents';
import { kitFields, usualNumbers } from './kit-fields';
import { type Mend, mendAbsent, mendNumber, mendObject } from './mend';
import { numberAt } from './number-at';
import { mendNamed, parseWithId } from './parse-named';
import type { ShelfName, Shelves } from './records';

/** What records did not hold at first: where one has none of it, it is as usual. */
const NEWER: readonly string[] = ['cushion'];

const MENDS: { readonly [S in ShelfName]: Mend<Shelves[S]> } = {
  cues: mendRecord('cues', 'Cue without a name'),
  cloths: mendRecord('cloths', 'Cloth without a name'),
  balls: mendRecord('balls', 'Balls without a name'),
  tables: mendRecord('tables', 'Table without a name'),
};

/** Mends a record that already has an id. */
function mendRecord<S extends ShelfName>(shelf: S, nameless: string): Mend<Shelves[S]> {
  const fields: Record<string, Mend<unknown>> = { ...mendNamed(nameless) };
  const groups: Record<string, Record<string, Mend<number>>> = {};
  const asUsual = usualNumbers(shelf);
  for (const { path, range, usual } of kitFields(shelf)) {
    const [key = '', inner] = path.split('.');
    const mend = mendNumber(range, usual);
    if (inner === undefined) fields[key] = mend;
    else {
      groups[key] = { ...groups[key], [inner]: mend };
      const mendGroup: Mend<unknown> = mendObject(groups[key]);
      const isNewer = NEWER.includes(key);
      fields[key] = isNewer ? mendAbsent(Reflect.get(asUsual, key), mendGroup) : mendGroup;
    }
  }
  return mendObject(fields) as unknown as Mend<Shelves[S]>;
}

/**
 * A valid record out of anything found on a shelf, with what had to be mended. Beyond repair is
 * something without fields, without an id, or without a single number of its own: filling all of
 * them in would be inventing a record, not mending one.
 */
export function parseRecord<S extends ShelfName>(shelf: S, raw: unknown): ParsedRow<Shelves[S]> {
  const fields = kitFields(shelf);
  return parseWithId(shelf, raw, (row) =>
    fields.every(({ path }) => numberAt(row, path) === null) ? 'nothing-readable' : MENDS[shelf],
  );
}
