import type { IDBPTransaction } from 'idb';
import type { Contents } from './contents';
import { type Database, type DatabaseSchema, DESK_KEY } from './database-schema';
import { readRaw } from './former-contents';
import { ERA_KEY, eraOf } from './import-era';
import type { Note } from './note';
import { contentsOf, type ReadContents, readContents } from './read-contents';
import type { RawStores } from './read-rows';
import type { Loaded } from './store-port';
import { CONTENT_STORES, LIST_NAMES } from './stores';
import { beginReading, beginWriting, putRow } from './transactions';
import { withNotes } from './unsaved-notes';

type OverContents = IDBPTransaction<DatabaseSchema, typeof CONTENT_STORES, 'readwrite'>;

/** What was read, and of which contents. */
export interface LoadedEra {
  readonly loaded: Loaded;
  readonly contents: Contents;
  readonly era: string;
  /** What was waiting and is part of it now. */
  readonly applied: readonly Note[];
  /** What was waiting and is set aside: something else stands in its place. */
  readonly left: readonly Note[];
}

/**
 * Reads all there is, with what was waiting, mends it, and writes back what changed. Where nothing
 * did, nothing is written: that is sooner done, and cannot be in the way of another page's saving.
 */
export async function loadContents(database: Database, notes: readonly Note[]): Promise<LoadedEra> {
  if (notes.length === 0) {
    const found = await lookThrough(database, notes);
    if (isWhole(found.read)) return found;
  }
  return await mendContents(database, notes);
}

/**
 * All in one transaction: another tab sees either none of it or all of it, and running it again
 * finds nothing left to mend.
 */
async function mendContents(database: Database, notes: readonly Note[]): Promise<LoadedEra> {
  const transaction = beginWriting(database, CONTENT_STORES);
  const found = readWith(await readRaw(transaction, CONTENT_STORES), notes);
  const writes = [
    ...carryOut(transaction, found.applied),
    ...writeBack(transaction, found.read),
    ...setAside(transaction, found.left),
  ];
  await Promise.all([...writes, transaction.done]);
  return found;
}

/** The same, without writing anything; so the keys of lists, which rows are deleted by, stay unread. */
export async function lookThrough(
  database: Database,
  notes: readonly Note[],
): Promise<LoadedEra & { readonly read: ReadContents }> {
  const transaction = beginReading(database, CONTENT_STORES);
  return readWith(await readRaw(transaction, CONTENT_STORES, ['desk']), notes);
}

function readWith(
  found: RawStores,
  notes: readonly Note[],
): LoadedEra & { readonly read: ReadContents } {
  const era = eraOf(found.desk?.find(({ key }) => key === ERA_KEY)?.value);
  const { raw, applied, left } = withNotes(found, notes, era);
  const read = readContents(raw);
  return { read, loaded: read.loaded, contents: contentsOf(raw, read), era, applied, left };
}

function carryOut(transaction: OverContents, notes: readonly Note[]): Promise<unknown>[] {
  return notes.map((note) =>
    'row' in note
      ? putRow(transaction, note.store, note.id, note.row)
      : transaction.objectStore(note.store).delete(note.id),
  );
}

function setAside(transaction: OverContents, notes: readonly Note[]): Promise<unknown>[] {
  const rows = notes.filter((note) => 'row' in note && note.store !== 'desk');
  return rows.map(({ store, row }) =>
    transaction.objectStore('set-aside').add({ store, raw: row, reason: 'noted' }),
  );
}

/** Whether what is kept can stay as it is. */
function isWhole({ lists, deskToPut, toSetAside }: ReadContents): boolean {
  const changes = LIST_NAMES.flatMap((name) => {
    const { toPut, toDelete } = lists[name];
    return [toPut.length, toDelete.length];
  });
  return !deskToPut && [...changes, toSetAside.length].every((count) => count === 0);
}

function writeBack(transaction: OverContents, read: ReadContents): Promise<unknown>[] {
  const writes: Promise<unknown>[] = [];
  for (const name of LIST_NAMES) {
    const { toPut, toDelete } = read.lists[name];
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
