import type { DeleteResult } from './store-port';

/** Why the only record of a shelf stays: there must be something to play with. */
export const LAST_ON_SHELF = {
  ok: false,
  reason: 'last-on-shelf',
  message: 'This is the last one here: copy it before deleting it.',
} as const satisfies DeleteResult;
