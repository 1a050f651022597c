import type { IDBPTransaction } from 'idb';
import { beginWriting } from './begin-transaction';
import type { Database, DatabaseSchema } from './database-schema';
import { ALL_STORES } from './stores';
import { abort } from './transaction-end';

export type OverAll = IDBPTransaction<DatabaseSchema, typeof ALL_STORES, 'readwrite'>;

/**
 * Runs work in one transaction over every store. Where the work throws, nothing of it is kept; where
 * it does not, all of it is on the device before this resolves.
 */
export async function allOrNothing<T>(
  database: Database,
  work: (transaction: OverAll) => Promise<T>,
): Promise<T> {
  const transaction = beginWriting(database, ALL_STORES);
  try {
    const result = await work(transaction);
    await transaction.done;
    return result;
  } catch (error) {
    abort(transaction);
    throw error;
  }
}
