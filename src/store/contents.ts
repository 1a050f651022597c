import type { Attempt } from './attempt';
import type { PlayedShot, Player } from './player';
import type { Desk, ShelfName, Shelves } from './records';
import type { SavedPosition } from './saved-position';

/** What each store that a person's changes go into holds. */
export interface Rows extends Shelves {
  readonly attempts: Attempt;
  readonly positions: SavedPosition;
  readonly players: Player;
  readonly played: PlayedShot;
  readonly desk: Desk;
}

export type StoreName = keyof Rows;

/** A store with any number of rows, each under its own id. */
export type ListName = Exclude<StoreName, 'desk'>;

/** The same stores, and that of what was set aside. */
export type ContentStore = StoreName | 'set-aside';

/** A row of any of them. */
export type KeptRow = Rows[StoreName];

/** The same, by store. */
export interface ContentRows extends Rows {
  readonly 'set-aside': SetAside;
}

/** The rows of all lists, each in the order to show it. */
export type Lists = { readonly [L in ListName]: readonly Rows[L][] };

/** Everything on each shelf, in the order to show it. */
export type ShelfContents = Pick<Lists, ShelfName>;

/** Everything the app keeps, made valid: what a backup holds. */
export interface Contents extends Lists {
  readonly desk: Desk;
  readonly setAside: readonly SetAside[];
}

/** One field that was unreadable or out of range, and what stands there now. */
export interface Repair {
  readonly store: StoreName;
  readonly id: string;
  /** Dotted where nested: `ballFriction.a`. */
  readonly field: string;
  readonly was: unknown;
  readonly now: unknown;
}

/** Something beyond repair. It is kept as it was, off the shelf. */
export interface Quarantined {
  readonly store: StoreName;
  readonly raw: unknown;
  readonly reason: 'not-a-record' | 'no-id' | 'nothing-readable' | 'unreadable';
}

/**
 * A row set aside: beyond repair, as it stood before a repair, or noted while the database was shut
 * and at odds with what it holds.
 */
export interface SetAside {
  readonly store: ContentStore;
  readonly raw: unknown;
  readonly reason: Quarantined['reason'] | 'repaired' | 'noted';
}

/** What a row amounts to: something valid, with what had to be mended, or why it is beyond repair. */
export type ParsedRow<T> =
  | { readonly ok: true; readonly record: T; readonly repairs: readonly Repair[] }
  | { readonly ok: false; readonly reason: Quarantined['reason'] };
