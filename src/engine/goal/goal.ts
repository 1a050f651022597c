import type { PocketName } from '../table/pocket-shape';

/** What is to be done from a position. */
export interface Intent {
  readonly ball: number;
  readonly pocket: PocketName;
}
