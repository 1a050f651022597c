import type { RestoreResult } from './store-port';

/** Why an import is not undone: there has been none, or it was under an older layout. */
export const NOTHING_KEPT = {
  ok: false,
  reason: 'nothing-kept',
  message: 'There is no import to undo.',
} as const satisfies RestoreResult;
