import type { Attempt } from '../attempt';
import type { Desk, Shelves } from '../records';
import type { SavedPosition } from '../saved-position';

/** What each store holds. */
export interface Rows extends Shelves {
  readonly attempts: Attempt;
  readonly positions: SavedPosition;
  readonly desk: Desk;
}

export type KeptRow = Rows[keyof Rows];

/** A row that another tab has changed, added or deleted: what it was on screen here, and is now. */
export type RowChange = {
  readonly [S in keyof Rows]: {
    readonly kind: 'row';
    readonly store: S;
    readonly id: string;
    /** Null where there was none. */
    readonly was: Rows[S] | null;
    /** Null where it is deleted. */
    readonly row: Rows[S] | null;
  };
}[keyof Rows];

/**
 * What cannot be joined of the doings of two tabs.
 * - `both`: both changed the same of a row; this tab's stands, and the other's is kept as a copy.
 * - `stays`: it was deleted here, and changed elsewhere: it is here again.
 * - `gone`: it was changed here, and deleted elsewhere: to be answered.
 * - `answered`: that is over.
 */
export interface Clash {
  readonly kind: 'both' | 'stays' | 'gone' | 'answered';
  readonly store: keyof Rows;
  readonly id: string;
  /** Of the row; empty where it has none. */
  readonly name: string;
  /** Under which the other's is kept; empty where there is none. */
  readonly copyName: string;
}

export type Elsewhere = RowChange | Clash;
