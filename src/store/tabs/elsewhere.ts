import type { Rows, StoreName } from '../contents';

/** A row that another tab has changed, added or deleted: what it was on screen here, and is now. */
export type RowChange = {
  readonly [S in StoreName]: {
    readonly kind: 'row';
    readonly store: S;
    readonly id: string;
    /** Null where there was none. */
    readonly was: Rows[S] | null;
    /** Null where it is deleted. */
    readonly row: Rows[S] | null;
  };
}[StoreName];

/**
 * What cannot be joined of the doings of two tabs.
 * - `both`: both changed the same of a row; this tab's stands, and the other's is kept as a copy.
 * - `stays`: it was deleted here, and changed elsewhere: it is here again.
 * - `gone`: it was changed here, and deleted elsewhere: to be answered.
 * - `answered`: that is over.
 */
export interface Clash {
  readonly kind: 'both' | 'stays' | 'gone' | 'answered';
  readonly store: StoreName;
  readonly id: string;
  /** Of the row; empty where it has none. */
  readonly name: string;
  /** Under which the other's is kept; empty where there is none. */
  readonly copyName: string;
}

export type Elsewhere = RowChange | Clash;
