import type { LaidShot, Pocket, ShelfName, Shelves } from '../records';
import type { SavedPosition } from '../saved-position';

/** A shot as it is asked, with the pocket that it is to go into. */
export interface SharedShot {
  readonly shot: LaidShot;
  readonly pocket: Pocket;
}

/** Records, one of a shelf at most. */
export type SharedKit = { readonly [S in ShelfName]?: Shelves[S] };

/** All that a link can hold: never a player, a log, or how somebody strays. */
export interface Shared {
  readonly shot: SharedShot | null;
  readonly position: SavedPosition | null;
  readonly kit: SharedKit;
}

/** The id of whatever came by a link and is not kept yet. */
export const LINK_ID = 'link';
