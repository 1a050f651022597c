import { type IDBPTransaction, type StoreNames, unwrap } from 'idb';
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

/**
 * Every row of some stores, with its key. All is asked for at once, and waited for once.
 *
 * @param keyed those whose keys are wanted; a row of another has its place among the rows for a key
 */
export async function readRaw<Mode extends IDBTransactionMode>(
  transaction: IDBPTransaction<DatabaseSchema, StoreNames<DatabaseSchema>[], Mode>,
  stores: readonly ContentStore[],
  keyed = stores,
): Promise<RawStores> {
  const plain = unwrap(transaction);
  const asked = stores.map((name) => {
    const store = plain.objectStore(name);
    const keys = keyed.includes(name) ? store.getAllKeys() : null;
    return { name, keys, values: store.getAll() };
  });
  await allAnswered(asked.flatMap(({ keys, values }) => (keys ? [keys, values] : [values])));
  const entries = asked.map(({ name, keys, values }) => {
    const rows = values.result.map((value: unknown, i) => ({ key: keys?.result[i] ?? i, value }));
    return [name, rows] as const;
  });
  return Object.fromEntries(entries);
}

/** Requests of one transaction are answered in the order in which they were made. */
function allAnswered(requests: readonly IDBRequest[]): Promise<void> {
  return new Promise((resolve, reject) => {
    for (const request of requests) request.onerror = () => reject(request.error);
    const last = requests.at(-1);
    if (last) last.onsuccess = () => resolve();
    else resolve();
  });
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
