import type { ShelfName } from './records';

/** Every shelf, in the order the app shows them. */
export const SHELF_NAMES = ['cues', 'cloths', 'balls', 'tables'] as const satisfies ShelfName[];
