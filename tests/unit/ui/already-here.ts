import { signal } from '@preact/signals';
import type { Late } from '../../../src/state/late';

/** A part that comes late, and has come. */
export const alreadyHere = <T>(part: T): Late<T> => ({
  here: signal(part),
  isAway: signal(false),
  fetch: async () => part,
});
