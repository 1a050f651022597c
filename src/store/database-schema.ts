import type { DBSchema, IDBPDatabase } from 'idb';
import type { ListName } from './contents';

/**
 * What the database holds. Rows are `unknown`: what was written by another version, or half
 * written, is not what today's types say.
 */
export interface DatabaseSchema extends DBSchema, ListTables {
  desk: { key: string; value: unknown };
  'set-aside': { key: number; value: unknown };
  'former-contents': { key: number; value: unknown };
}

type ListTables = { [L in ListName]: { key: IDBValidKey; value: unknown } };

export type Database = IDBPDatabase<DatabaseSchema>;

/** The key of the one row of the `desk` store. */
export const DESK_KEY = 'current';
