import type { IDBPDatabase } from 'idb';
import type { DatabaseSchema } from './database-schema';
import { SHELF_NAMES } from './shelf-names';

/** One step of the database's layout. A step that has shipped is never changed. */
export interface Migration {
  /** The version it leads to. */
  readonly version: number;
  run(database: IDBPDatabase<DatabaseSchema>): void;
}

export const MIGRATIONS: readonly Migration[] = [
  {
    version: 1,
    run(database) {
      for (const shelf of SHELF_NAMES) database.createObjectStore(shelf, { keyPath: 'id' });
      database.createObjectStore('desk');
      database.createObjectStore('set-aside', { autoIncrement: true });
    },
  },
];

/** The version that a list of steps leads to. */
export function latestVersion(migrations: readonly Migration[]): number {
  return Math.max(...migrations.map((migration) => migration.version));
}

/** Runs every step after the given version, in order. Version 0 is no database yet. */
export function migrate(
  database: IDBPDatabase<DatabaseSchema>,
  fromVersion: number,
  migrations: readonly Migration[],
): void {
  for (const migration of migrations) {
    if (migration.version > fromVersion) migration.run(database);
  }
}
