import type { IDBPTransaction, StoreNames } from 'idb';
import type { ContentStore } from './contents';
import type { DatabaseSchema } from './database-schema';
import { isPlainObject } from './mend';
import { contentsOf, readContents } from './read-contents';
import type { RawRow, RawStores } from './read-rows';
import type { FormerCopy } from './store-port';

/** All there was before an upgrade or an import, exactly as it was. */
export interface FormerContents {
  readonly reason: 'upgrade' | 'import';
  /** Tells it from every other. */
  readonly id: string;
  readonly atMs: number;
  /** The version of the layout these rows had. */
  readonly schema: number;
  readonly rows: RawStores;
}

/** Every row of some stores, with its key. */
export async function readRaw<Mode extends IDBTransactionMode>(
  transaction: IDBPTransaction<DatabaseSchema, StoreNames<DatabaseSchema>[], Mode>,
  stores: readonly ContentStore[],
): Promise<RawStores> {
  const entries = stores.map(async (name) => {
    const store = transaction.objectStore(name);
    const [keys, values] = await Promise.all([store.getAllKeys(), store.getAll()]);
    return [name, values.map((value, index) => ({ key: keys[index] ?? index, value }))] as const;
  });
  return Object.fromEntries(await Promise.all(entries));
}

/** The newest row that an import can be undone with: the layout must still be the same. */
export function lastImport(rows: readonly unknown[], schema: number): FormerContents | null {
  return (
    rows
      .filter(isOfImport)
      .filter((row) => row.schema === schema)
      .at(-1) ?? null
  );
}

export function isOfImport(was: unknown): was is FormerContents {
  return (
    isPlainObject(was) &&
    was.reason === 'import' &&
    typeof was.atMs === 'number' &&
    isPlainObject(was.rows)
  );
}

/** What can be told of any row here: all that is missing or unreadable of it is as on a first visit. */
export function formerCopies(rows: readonly unknown[]): readonly FormerCopy[] {
  return rows
    .flatMap((row): readonly FormerCopy[] => {
      if (!isPlainObject(row) || !isPlainObject(row.rows)) return [];
      const reason = row.reason === 'import' ? 'import' : 'upgrade';
      const atMs = typeof row.atMs === 'number' && Number.isFinite(row.atMs) ? row.atMs : 0;
      const raw = rawOf(row.rows);
      return [{ reason, atMs, contents: contentsOf(raw, readContents(raw)) }];
    })
    .reverse();
}

/** Lists of rows; whatever else stands in their place is left out. */
function rawOf(rows: Record<string, unknown>): RawStores {
  const isRow = (row: unknown): row is RawRow => isPlainObject(row) && 'key' in row;
  return Object.fromEntries(
    Object.entries(rows).map(([name, list]) => [
      name,
      Array.isArray(list) ? list.filter(isRow) : [],
    ]),
  );
}
