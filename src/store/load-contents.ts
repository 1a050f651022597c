import type { IDBPTransaction } from 'idb';
import type { Database } from './database-door';
import { ALL_STORES, type DatabaseSchema, DESK_KEY } from './database-schema';
import { type ReadContents, readContents } from './read-contents';
import type { RawRow } from './read-shelf';
import type { ShelfName } from './records';
import { SHELF_NAMES } from './shelf-names';
import type { Loaded } from './store-port';

type OverAll = IDBPTransaction<DatabaseSchema, typeof ALL_STORES, 'readwrite'>;

/**
 * Reads all there is, mends it, and writes back what changed, all in one transaction: another tab
 * sees either none of it or all of it, and running it again finds nothing left to mend.
 */
export async function loadContents(database: Database, deskDraft: unknown): Promise<Loaded> {
  const transaction = database.transaction(ALL_STORES, 'readwrite', { durability: 'strict' });
  const [cues, cloths, balls, tables, desk] = await Promise.all([
    rowsOf(transaction, 'cues'),
    rowsOf(transaction, 'cloths'),
    rowsOf(transaction, 'balls'),
    rowsOf(transaction, 'tables'),
    transaction.objectStore('desk').get(DESK_KEY),
  ]);
  const read = readContents({ rows: { cues, cloths, balls, tables }, desk, deskDraft });
  await Promise.all([...writeBack(transaction, read), transaction.done]);
  return read.loaded;
}

async function rowsOf(transaction: OverAll, shelf: ShelfName): Promise<RawRow[]> {
  const store = transaction.objectStore(shelf);
  const [keys, values] = await Promise.all([store.getAllKeys(), store.getAll()]);
  return values.map((value, index) => ({ key: keys[index] ?? index, value }));
}

function writeBack(transaction: OverAll, read: ReadContents): Promise<unknown>[] {
  const writes: Promise<unknown>[] = [];
  for (const shelf of SHELF_NAMES) {
    const store = transaction.objectStore(shelf);
    const { toPut, toDelete } = read.shelves[shelf];
    writes.push(...toPut.map((record) => store.put(record)));
    writes.push(...toDelete.map((key) => store.delete(key)));
  }
  if (read.deskToPut) {
    writes.push(transaction.objectStore('desk').put(read.deskToPut, DESK_KEY));
  }
  const setAside = transaction.objectStore('set-aside');
  writes.push(...read.toSetAside.map((row) => setAside.add(row)));
  return writes;
}
