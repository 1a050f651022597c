import type { PocketName } from '../engine/table/pocket-shape';

/** Row by row as they lie on the drawing, its break end below. */
export const POCKETS_UPRIGHT: readonly PocketName[] = [
  'far-left',
  'far-right',
  'middle-left',
  'middle-right',
  'near-left',
  'near-right',
];
