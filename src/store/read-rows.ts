import type { ContentStore, ParsedRow, Quarantined, Repair, SetAside, StoreName } from './contents';

/** A row as it was found. */
export interface RawRow {
  readonly key: IDBValidKey;
  readonly value: unknown;
}

/** Rows as they were found, by the name of their store. */
export type RawStores = { readonly [S in ContentStore]?: readonly RawRow[] };

/** What a store's rows amount to, and what must be written to make the store agree. */
export interface ReadRows<T> {
  readonly records: readonly T[];
  readonly repairs: readonly Repair[];
  readonly quarantined: readonly Quarantined[];
  readonly toPut: readonly T[];
  readonly toDelete: readonly IDBValidKey[];
  readonly toSetAside: readonly SetAside[];
}

/**
 * Parses a store. A mended record is written back and its old self set aside; one beyond repair is
 * set aside and taken off.
 */
export function readRows<T>(
  store: StoreName,
  rows: readonly RawRow[],
  parse: (value: unknown) => ParsedRow<T>,
): ReadRows<T> {
  const records: T[] = [];
  const repairs: (readonly Repair[])[] = [];
  const quarantined: Quarantined[] = [];
  const toPut: T[] = [];
  const toDelete: IDBValidKey[] = [];
  const toSetAside: SetAside[] = [];
  for (const { key, value } of rows) {
    const parsed = parse(value);
    if (!parsed.ok) {
      quarantined.push({ store, raw: value, reason: parsed.reason });
      toDelete.push(key);
      continue;
    }
    records.push(parsed.record);
    if (parsed.repairs.length === 0) continue;
    repairs.push(parsed.repairs);
    toPut.push(parsed.record);
    toSetAside.push({ store, raw: value, reason: 'repaired' });
  }
  return {
    records,
    repairs: repairs.flat(),
    quarantined,
    toPut,
    toDelete,
    toSetAside: [...toSetAside, ...quarantined],
  };
}
