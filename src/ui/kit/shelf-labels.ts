import type { ShelfName } from '../../store/records';

/** In the order they are shown. */
export const SHELVES: readonly ShelfName[] = ['cues', 'cloths', 'balls', 'tables'];

export const SHELF_LABELS: Readonly<Record<ShelfName, string>> = {
  cues: 'Cue',
  cloths: 'Cloth',
  balls: 'Balls',
  tables: 'Table',
};
