import type { ShelfName } from './records';
import type { StoreName } from './store-port';

/** Every shelf, in the order the app shows them. */
export const SHELF_NAMES = ['cues', 'cloths', 'balls', 'tables'] as const satisfies ShelfName[];

/** Every store that a person's changes go into. */
export const STORE_NAMES: readonly StoreName[] = [...SHELF_NAMES, 'attempts', 'positions', 'desk'];
