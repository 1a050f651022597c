import type { IDBPTransaction } from 'idb';
import { beginWriting } from './begin-transaction';
import type { Database } from './database-door';
import { ReplacedError } from './database-errors';
import type { DatabaseSchema } from './database-schema';
import { readEra } from './import-era';
import { LAST_ON_SHELF } from './last-on-shelf';
import type { ContentStore, DeleteResult, StoreName } from './store-port';
import { abort } from './transaction-end';

type OverStore = IDBPTransaction<DatabaseSchema, ContentStore[], 'readwrite'>;

/** Where a row goes, and of which contents it is. */
export interface Place {
  readonly store: StoreName;
  readonly id: string;
  readonly era: string;
}

export async function putRow(
  database: Database,
  place: Place,
  row: unknown,
): Promise<DeleteResult> {
  return await write(database, place, async (transaction) => {
    const store = transaction.objectStore(place.store);
    await (place.store === 'desk' ? store.put(row, place.id) : store.put(row));
    return { ok: true };
  });
}

/** Refuses the last record of a shelf; attempts and positions may all go. */
export async function deleteRow(database: Database, place: Place): Promise<DeleteResult> {
  return await write(database, place, async (transaction) => {
    const store = transaction.objectStore(place.store);
    const isShelf = place.store !== 'attempts' && place.store !== 'positions';
    const others = (await store.getAllKeys()).filter((key) => key !== place.id);
    if (isShelf && others.length === 0) return LAST_ON_SHELF;
    await store.delete(place.id);
    return { ok: true };
  });
}

/**
 * Waits until the device has it, not only the browser: a flat battery must not cost a cue. What the
 * page shows may have been replaced by another tab since it was read: then nothing is written.
 */
async function write(
  database: Database,
  { store, era }: Place,
  work: (transaction: OverStore) => Promise<DeleteResult>,
): Promise<DeleteResult> {
  const stores: ContentStore[] = [store, 'desk'];
  const transaction = beginWriting(database, stores);
  try {
    if ((await readEra(transaction.objectStore('desk'))) !== era) throw new ReplacedError();
    const result = await work(transaction);
    await transaction.done;
    return result;
  } catch (error) {
    abort(transaction);
    throw error;
  }
}
