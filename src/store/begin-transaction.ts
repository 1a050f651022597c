import type { IDBPDatabase, IDBPTransaction, StoreNames } from 'idb';
import type { DatabaseSchema } from './database-schema';
import { abort, ignoreSecondTelling } from './transaction-end';

type Database = IDBPDatabase<DatabaseSchema>;
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
