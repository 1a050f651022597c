import type { IDBPTransaction, StoreNames } from 'idb';
import type { ContentStore } from './contents';
import type { Database, DatabaseSchema } from './database-schema';

type Names = readonly StoreNames<DatabaseSchema>[];
type Over<Stores extends Names, Mode extends IDBTransactionMode> = IDBPTransaction<
  DatabaseSchema,
  Stores,
  Mode
>;

const underWay = new WeakMap<Database, Set<{ abort(): void }>>();

export function beginReading<const Stores extends Names>(
  database: Database,
  stores: Stores,
): Over<Stores, 'readonly'> {
  return followed(database, database.transaction(stores, 'readonly'));
}

/** A transaction that is done once the device has it, not only the browser. */
export function beginWriting<const Stores extends Names>(
  database: Database,
  stores: Stores,
): Over<Stores, 'readwrite'> {
  return followed(database, database.transaction(stores, 'readwrite', { durability: 'strict' }));
}

/** Takes back all that is under way on this connection, in this very moment. */
export function abandonAll(database: Database): void {
  for (const transaction of underWay.get(database) ?? []) abort(transaction);
}

function followed<T extends { readonly done: Promise<void>; abort(): void }>(
  database: Database,
  transaction: T,
): T {
  const mine = underWay.get(database) ?? new Set();
  underWay.set(database, mine.add(transaction));
  const forget = () => void mine.delete(transaction);
  ignoreSecondTelling(transaction.done.then(forget, forget));
  return transaction;
}

/**
 * Does work in one transaction. Where the work throws, nothing of it is kept; where it does not, all
 * of it is on the device before this resolves.
 */
export async function allOrNothing<T extends { readonly done: Promise<void>; abort(): void }, R>(
  transaction: T,
  work: (transaction: T) => Promise<R>,
): Promise<R> {
  try {
    const result = await work(transaction);
    await transaction.done;
    return result;
  } catch (error) {
    abort(transaction);
    throw error;
  }
}

/**
 * Asks for many requests at once and waits until all are answered: one by one, each would wait for
 * the answer of the one before. Where one fails, so does this, and the others' failures are part of it.
 */
export async function askAll<T>(
  rows: readonly T[],
  ask: (row: T) => Promise<unknown>,
): Promise<void> {
  const asked = rows.map((row) => {
    const answer = ask(row);
    answer.catch(() => {});
    return answer;
  });
  await Promise.all(asked);
}

/** Puts a row under its key: those of the desk do not bear it themselves. */
export function putRow(
  transaction: { objectStore(name: ContentStore): Putting },
  name: ContentStore,
  key: string,
  row: unknown,
): Promise<unknown> {
  const store = transaction.objectStore(name);
  return name === 'desk' ? store.put(row, key) : store.put(row);
}

interface Putting {
  put(row: unknown, key?: string): Promise<unknown>;
}

/** A transaction tells of its failure beside the request that failed; once is enough. */
export function ignoreSecondTelling(done: Promise<void>): void {
  done.catch(() => {});
}

/** Takes back what a transaction did; what failed in it may have done so already. */
export function abort(transaction: { abort(): void }): void {
  try {
    transaction.abort();
  } catch {
    // There is nothing left to take back.
  }
}
