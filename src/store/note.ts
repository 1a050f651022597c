import type { StoreName } from './contents';

/** A change that the database did not take: a row as it should be, or none where it was deleted. */
export interface Note {
  readonly store: StoreName;
  readonly id: string;
  /** The contents that were on screen: see `import-era`; null where none could be read. */
  readonly era: string | null;
  readonly row?: unknown;
  /** The row before the change, as this page and the database last agreed on it. */
  readonly was?: unknown;
  /** The page that noted it: two tabs may each have changed the same row. */
  readonly by?: string;
}
