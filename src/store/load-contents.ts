import type { IDBPTransaction } from 'idb';
import type { Database } from './database-door';
import { CONTENT_STORES, type DatabaseSchema, DESK_KEY } from './database-schema';
import { readRaw } from './former-contents';
import { contentsOf, type ReadContents, readContents } from './read-contents';
import { SHELF_NAMES } from './shelf-names';
import type { Contents, Loaded } from './store-port';
import { ignoreSecondTelling } from './transaction-end';

type OverContents = IDBPTransaction<DatabaseSchema, typeof CONTENT_STORES, 'readwrite'>;

/**
 * Reads all there is, mends it, and writes back what changed, all in one transaction: another tab
 * sees either none of it or all of it, and running it again finds nothing left to mend.
 */
export async function loadContents(database: Database, deskDraft: unknown): Promise<Loaded> {
  const transaction = database.transaction(CONTENT_STORES, 'readwrite', { durability: 'strict' });
  ignoreSecondTelling(transaction.done);
  const read = readContents(await readRaw(transaction, CONTENT_STORES), deskDraft);
  await Promise.all([...writeBack(transaction, read), transaction.done]);
  return read.loaded;
}

/** The same, without writing anything. */
export async function lookThrough(database: Database, deskDraft: unknown): Promise<Contents> {
  const transaction = database.transaction(CONTENT_STORES);
  ignoreSecondTelling(transaction.done);
  const raw = await readRaw(transaction, CONTENT_STORES);
  return contentsOf(raw, readContents(raw, deskDraft));
}

function writeBack(transaction: OverContents, read: ReadContents): Promise<unknown>[] {
  const writes: Promise<unknown>[] = [];
  const lists = [
    ...SHELF_NAMES.map((shelf) => [shelf, read.shelves[shelf]] as const),
    ['attempts', read.attempts] as const,
    ['positions', read.positions] as const,
  ];
  for (const [name, { toPut, toDelete }] of lists) {
    const store = transaction.objectStore(name);
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
