import type { DBSchema } from 'idb';
import type { ShelfName } from './records';
import type { SetAside } from './store-port';

/**
 * What the database holds. Rows are `unknown`: what was written by another version, or half
 * written, is not what today's types say.
 */
export interface DatabaseSchema extends DBSchema {
  cues: { key: IDBValidKey; value: unknown };
  cloths: { key: IDBValidKey; value: unknown };
  balls: { key: IDBValidKey; value: unknown };
  tables: { key: IDBValidKey; value: unknown };
  desk: { key: string; value: unknown };
  'set-aside': { key: number; value: SetAside };
}

/** The key of the one row of the `desk` store. */
export const DESK_KEY = 'current';

/** Every store, for a transaction over all of them. */
export const ALL_STORES = [
  'cues',
  'cloths',
  'balls',
  'tables',
  'desk',
  'set-aside',
] as const satisfies readonly (ShelfName | 'desk' | 'set-aside')[];
