import { DEMO_CATALOGUE } from './demo-catalogue';
import { orderShelf } from './order-shelf';
import { parseRecord } from './parse-record';
import type { ShelfName, Shelves } from './records';
import type { Quarantined, Repair, SetAside } from './store-port';

/** A row as it was found. */
export interface RawRow {
  readonly key: IDBValidKey;
  readonly value: unknown;
}

/** What a shelf's rows amount to, and what must be written to make the store agree. */
export interface ReadShelf<S extends ShelfName> {
  /** Never empty. */
  readonly records: readonly Shelves[S][];
  readonly repairs: readonly Repair[];
  readonly quarantined: readonly Quarantined[];
  readonly toPut: readonly Shelves[S][];
  readonly toDelete: readonly IDBValidKey[];
  readonly toSetAside: readonly SetAside[];
}

/**
 * Parses a shelf. A mended record is written back and its old self set aside; one beyond repair
 * is set aside and taken off. A shelf with nothing left gets the demo catalogue.
 */
export function readShelf<S extends ShelfName>(shelf: S, rows: readonly RawRow[]): ReadShelf<S> {
  const records: Shelves[S][] = [];
  const repairs: Repair[] = [];
  const quarantined: Quarantined[] = [];
  const toPut: Shelves[S][] = [];
  const toDelete: IDBValidKey[] = [];
  const toSetAside: SetAside[] = [];
  for (const { key, value } of rows) {
    const parsed = parseRecord(shelf, value);
    if (!parsed.ok) {
      quarantined.push({ store: shelf, raw: value, reason: parsed.reason });
      toDelete.push(key);
      continue;
    }
    records.push(parsed.record);
    if (parsed.repairs.length === 0) continue;
    repairs.push(...parsed.repairs);
    toPut.push(parsed.record);
    toSetAside.push({ store: shelf, raw: value, reason: 'repaired' });
  }
  if (records.length === 0) {
    const demos: readonly Shelves[S][] = DEMO_CATALOGUE[shelf];
    records.push(...demos);
    toPut.push(...demos);
  }
  toSetAside.push(...quarantined);
  return {
    records: orderShelf(shelf, records),
    repairs,
    quarantined,
    toPut,
    toDelete,
    toSetAside,
  };
}
