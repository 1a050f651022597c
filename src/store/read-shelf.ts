import { DEMO_CATALOGUE } from './demo-catalogue';
import { orderShelf } from './order-shelf';
import { parseRecord } from './parse-record';
import { type RawRow, type ReadRows, readRows } from './read-rows';
import type { ShelfName, Shelves } from './records';

/** Parses a shelf. One with nothing left gets the demo catalogue, so it is never empty. */
export function readShelf<S extends ShelfName>(
  shelf: S,
  rows: readonly RawRow[],
): ReadRows<Shelves[S]> {
  const read = readRows(shelf, rows, (value) => parseRecord(shelf, value));
  if (read.records.length > 0) return { ...read, records: orderShelf(shelf, read.records) };
  const demos: readonly Shelves[S][] = DEMO_CATALOGUE[shelf];
  return { ...read, records: orderShelf(shelf, demos), toPut: demos };
}
