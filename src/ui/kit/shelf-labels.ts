import type { ShelfName } from '../../store/records';

/** In the order they are shown. */
export const SHELVES: readonly ShelfName[] = ['cues', 'cloths', 'balls', 'tables'];

export const SHELF_LABELS: Readonly<Record<ShelfName, string>> = {
  cues: 'Cue',
  cloths: 'Cloth',
  balls: 'Balls',
  tables: 'Table',
};

/** "cloth, balls". */
export function shelfList(shelves: readonly ShelfName[]): string {
  return shelves.map((shelf) => SHELF_LABELS[shelf].toLowerCase()).join(', ');
}
