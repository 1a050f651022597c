import type { IDBPDatabase, IDBPTransaction, StoreNames } from 'idb';
import { type DatabaseSchema, DESK_KEY } from './database-schema';
import { EXAMPLE_POSITIONS } from './example-positions';
import { type FormerContents, isOfImport, readRaw } from './former-contents';
import { freshId } from './fresh-id';
import { playerOfFormerDesk, withPlayer } from './parse-player';
import { withGoal } from './parse-position';
import { SHELF_NAMES } from './records';
import { CONTENT_STORES } from './stores';

/** One step of the database's layout. A step that has shipped is never changed. */
export interface Migration {
  /** The version it leads to. */
  readonly version: number;
  /** A promise it returns is waited for before the next. */
  run(database: IDBPDatabase<DatabaseSchema>, transaction: UpgradeTransaction): unknown;
}

/** The transaction a browser opens for an upgrade, over every store. */
export type UpgradeTransaction = IDBPTransaction<
  DatabaseSchema,
  StoreNames<DatabaseSchema>[],
  'versionchange'
>;

export const MIGRATIONS: readonly Migration[] = [
  {
    version: 1,
    run(database) {
      for (const shelf of SHELF_NAMES) database.createObjectStore(shelf, { keyPath: 'id' });
      database.createObjectStore('desk');
      database.createObjectStore('set-aside', { autoIncrement: true });
    },
  },
  {
    version: 2,
    run(database) {
      database.createObjectStore('attempts', { keyPath: 'id' });
      database.createObjectStore('former-contents', { autoIncrement: true });
    },
  },
  {
    version: 3,
    run(database) {
      const positions = database.createObjectStore('positions', { keyPath: 'id' });
      return Promise.all(EXAMPLE_POSITIONS.map((position) => positions.put(position)));
    },
  },
  {
    version: 4,
    async run(_database, transaction) {
      const positions = transaction.objectStore('positions');
      const rows = await positions.getAll();
      await Promise.all(rows.map((row) => positions.put(withGoal(row))));
    },
  },
  {
    version: 5,
    async run(database, transaction) {
      const players = database.createObjectStore('players', { keyPath: 'id' });
      database.createObjectStore('played', { keyPath: 'id' });
      const desks = transaction.objectStore('desk');
      const desk = await desks.get(DESK_KEY);
      const player = playerOfFormerDesk(desk);
      if (player === null) return;
      await players.put(player);
      await desks.put(withPlayer(desk, player), DESK_KEY);
    },
  },
];

/** The version that a list of steps leads to. */
export function latestVersion(migrations: readonly Migration[]): number {
  return Math.max(...migrations.map((migration) => migration.version));
}

/**
 * Runs every step after the given version, in order. Version 0 is no database yet. What an older
 * one holds is first read and then kept beside, in the same transaction: a step that goes wrong, or
 * a copy that cannot be written, leaves the database as it was.
 */
export async function migrate(
  database: IDBPDatabase<DatabaseSchema>,
  fromVersion: number,
  transaction: UpgradeTransaction,
  migrations: readonly Migration[],
): Promise<void> {
  const former = fromVersion > 0 ? await readFormer(database, fromVersion, transaction) : null;
  for (const migration of migrations) {
    if (migration.version > fromVersion) await migration.run(database, transaction);
  }
  if (former) await keepFormer(transaction, former);
}

/** How many copies from before upgrades are kept. */
const COPIES = 3;

/** The oldest go; that of an import stays, to undo it with. */
async function keepFormer(transaction: UpgradeTransaction, former: FormerContents): Promise<void> {
  const store = transaction.objectStore('former-contents');
  const ofUpgrades: number[] = [];
  for (const key of await store.getAllKeys()) {
    if (!isOfImport(await store.get(key))) ofUpgrades.push(key);
  }
  const tooMany = ofUpgrades.slice(0, Math.max(0, ofUpgrades.length - (COPIES - 1)));
  await Promise.all(tooMany.map((key) => store.delete(key)));
  await store.add(former);
}

async function readFormer(
  database: IDBPDatabase<DatabaseSchema>,
  schema: number,
  transaction: UpgradeTransaction,
): Promise<FormerContents> {
  const stores = CONTENT_STORES.filter((name) => database.objectStoreNames.contains(name));
  const rows = await readRaw(transaction, stores);
  return { reason: 'upgrade', id: freshId(), atMs: Date.now(), schema, rows };
}
