import type { IDBPTransaction } from 'idb';
import type { ContentStore, KeptRow, StoreName } from './contents';
import { ReplacedError } from './database-errors';
import type { Database, DatabaseSchema } from './database-schema';
import { EXAMPLE_POSITIONS } from './example-positions';
import { ERA_KEY, readEra } from './import-era';
import type { Note } from './note';
import type { Failed } from './store-port';
import { CONTENT_STORES, parseRow, STORES } from './stores';
import { type Settled, settleNote } from './tabs/settle-note';
import { allOrNothing, askAll, beginReading, beginWriting, putRow } from './transactions';

type OverStore = IDBPTransaction<DatabaseSchema, ContentStore[], 'readwrite'>;

/** Where a row goes, and of which contents it is. */
export interface Place {
  readonly store: StoreName;
  readonly id: string;
  readonly era: string;
}

/** What became of a change. */
export type Saved = Settlement | Failed<'last-on-shelf'>;

export interface Settlement {
  readonly ok: true;
  readonly settled: Settled;
}

/**
 * Saves a change, joined in one transaction with what other tabs have made of its row meanwhile.
 * Refuses to delete the last record of a shelf; rows of other lists may all go.
 *
 * Waits until the device has it, not only the browser: a flat battery must not cost a cue. What the
 * page shows may have been replaced by another tab since it was read: then nothing is written.
 */
export async function saveNote(database: Database, note: Note & Place): Promise<Saved> {
  const stores: ContentStore[] = [note.store, 'desk'];
  return await allOrNothing(beginWriting(database, stores), async (transaction) => {
    if ((await readEra(transaction.objectStore('desk'))) !== note.era) throw new ReplacedError();
    return await write(transaction, note);
  });
}

async function write(transaction: OverStore, note: Note): Promise<Saved> {
  const { store: name, id } = note;
  const store = transaction.objectStore(name);
  const settled = settleNote(note, await store.get(id));
  if (settled.kind === 'put') {
    await putRow(transaction, name, id, settled.row);
    if (settled.copy) await store.put(settled.copy);
  }
  if (settled.kind === 'deleted') {
    const { isNeverEmpty } = STORES[name];
    const others = isNeverEmpty ? (await store.getAllKeys()).filter((key) => key !== id) : [];
    if (isNeverEmpty && others.length === 0) return { ok: false, reason: 'last-on-shelf' };
    await store.delete(id);
  }
  return { ok: true, settled };
}

/** A row as it is kept now; undefined where there is none. */
export async function readRow(
  database: Database,
  { store, id, era }: Place,
): Promise<{ readonly ok: true; readonly row: KeptRow | undefined }> {
  const transaction = beginReading(database, [store, 'desk'] as const);
  const [now, raw] = await Promise.all([
    readEra(transaction.objectStore('desk')),
    transaction.objectStore(store).get(id),
  ]);
  const row = parseRow(store, raw);
  if (now !== era) throw new ReplacedError();
  if (row === undefined && raw !== undefined) throw new TypeError('It cannot be read here');
  return { ok: true, row };
}

/**
 * Fills an empty database with rows of whatever stores and the era they are of, in one transaction;
 * nothing of it is kept where that fails, with the reason.
 */
export async function putAllRows(
  database: Database,
  rows: readonly Note[],
  era: string,
): Promise<void> {
  const eraRow = { store: 'desk', id: ERA_KEY, row: era } as const;
  await allOrNothing(beginWriting(database, CONTENT_STORES), async (transaction) => {
    // They come with a new database; those that the page has are among its rows.
    const examples = transaction.objectStore('positions');
    await askAll(EXAMPLE_POSITIONS, ({ id }) => examples.delete(id));
    const all: readonly Pick<Note, 'store' | 'id' | 'row'>[] =
      era === '' ? rows : [...rows, eraRow];
    await askAll(all, ({ store, id, row }) => putRow(transaction, store, id, row));
  });
}
