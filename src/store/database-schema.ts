import type { DBSchema } from 'idb';
import type { ContentStore } from './store-port';

/**
 * What the database holds. Rows are `unknown`: what was written by another version, or half
 * written, is not what today's types say.
 */
export interface DatabaseSchema extends DBSchema {
  cues: { key: IDBValidKey; value: unknown };
  cloths: { key: IDBValidKey; value: unknown };
  balls: { key: IDBValidKey; value: unknown };
  tables: { key: IDBValidKey; value: unknown };
  attempts: { key: IDBValidKey; value: unknown };
  positions: { key: IDBValidKey; value: unknown };
  desk: { key: string; value: unknown };
  'set-aside': { key: number; value: unknown };
  'former-contents': { key: number; value: unknown };
}

/** The key of the one row of the `desk` store. */
export const DESK_KEY = 'current';

/** Every store of what the app keeps. */
export const CONTENT_STORES = [
  'cues',
  'cloths',
  'balls',
  'tables',
  'attempts',
  'positions',
  'desk',
  'set-aside',
] as const satisfies readonly ContentStore[];

/** Those, and where their contents are kept from before an upgrade or an import. */
export const ALL_STORES = [...CONTENT_STORES, 'former-contents'] as const;
