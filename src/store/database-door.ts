import { openDB } from 'idb';
import { isConnectionLost, writeFailure } from './database-errors';
import type { Database, DatabaseSchema } from './database-schema';
import { latestVersion, MIGRATIONS, type Migration, migrate } from './migrations';
import type { Failed } from './store-port';
import { abandonAll, abort, ignoreSecondTelling } from './transactions';

/**
 * What can happen to a connection without anyone asking. Where it was `emptied`, the database was
 * `deleted`, or taken away without a word, and the one opened in its stead has nothing in it.
 */
export type DatabaseEvent = 'blocked' | 'outdated' | 'deleted' | 'closed' | 'emptied';

/** The page's one connection to its database. */
export interface DatabaseDoor {
  /**
   * Runs work on the open database, opening it where needed. When the connection turns out to be
   * dead, the work runs once more on a new one, so it must be safe to run twice: put rows under
   * keys of their own, all in one transaction.
   */
  withDatabase<T>(work: (database: Database) => Promise<T>): Promise<T>;
  /**
   * Takes back what is under way and lets the connection go, for the page goes away. The next work
   * opens another; what was taken back is done again there, should the page come back.
   */
  letGo(): void;
}

/**
 * Nothing is opened until it is needed.
 * @param onEvent is given the new connection where the database was emptied
 */
export function createDatabaseDoor(
  name: string,
  onEvent: (event: DatabaseEvent, opened?: Database) => void,
  migrations: readonly Migration[] = MIGRATIONS,
): DatabaseDoor {
  let connection: Promise<Database> | null = null;
  let opened: Database | null = null;
  let wasOpen = false;

  const forget = (lost: Promise<Database>) => {
    if (connection !== lost) return;
    connection = null;
    opened = null;
  };

  const connect = (): Promise<Database> => {
    if (connection) return connection;
    let isNew = false;
    const opening = open(name, migrations, onEvent, {
      onLost: () => forget(opening),
      onNew: () => {
        isNew = true;
      },
    });
    // Set before anything is awaited, so that callers at once share one connection; a failed
    // opening is forgotten, so that the next caller tries again.
    connection = opening;
    opening.then(
      (database) => {
        if (connection === opening) opened = database;
        // Before any work that waits for it.
        if (isNew && wasOpen) onEvent('emptied', database);
        wasOpen = true;
      },
      () => forget(opening),
    );
    return opening;
  };

  return {
    async withDatabase(work) {
      const mine = connect();
      try {
        return await work(await mine);
      } catch (error) {
        if (!isConnectionLost(error) && (await isAlive(mine))) throw error;
        forget(mine);
        return await work(await connect());
      }
    },
    letGo() {
      if (!opened || !connection) return;
      abandonAll(opened);
      opened.close();
      forget(connection);
    },
  };
}

/**
 * Whether a connection still takes work. A transaction running when the connection died only says
 * that it was aborted, and does so before the browser says anything else.
 */
async function isAlive(connection: Promise<Database>): Promise<boolean> {
  try {
    (await connection).transaction('desk', 'readonly');
    return true;
  } catch (error) {
    return !isConnectionLost(error);
  }
}

function open(
  name: string,
  migrations: readonly Migration[],
  onEvent: (event: DatabaseEvent) => void,
  { onLost, onNew }: { readonly onLost: () => void; readonly onNew: () => void },
): Promise<Database> {
  return openDB<DatabaseSchema>(name, latestVersion(migrations), {
    async upgrade(database, fromVersion, _toVersion, transaction) {
      ignoreSecondTelling(transaction.done);
      if (fromVersion === 0) onNew();
      try {
        await migrate(database, fromVersion, transaction, migrations);
      } catch {
        // Opening then fails, with the reason.
        abort(transaction);
      }
    },
    blocked: () => onEvent('blocked'),
    blocking(_current, blocked, event) {
      // Stepping aside lets the other go on; it waits for what is being written here.
      (event.target as IDBDatabase).close();
      onLost();
      // A deletion comes as an upgrade to no version.
      onEvent(blocked === null ? 'deleted' : 'outdated');
    },
    terminated() {
      onLost();
      onEvent('closed');
    },
  });
}

/** Works on the database, or says why that was not possible. */
export async function attemptOn<R>(
  door: DatabaseDoor,
  work: (database: Database) => Promise<R>,
): Promise<R | Failed> {
  try {
    return await door.withDatabase(work);
  } catch (error) {
    return writeFailure(error);
  }
}
