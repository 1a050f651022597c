import { computed, type ReadonlySignal, signal } from '@preact/signals';

/**
 * Tells whether anybody looks, so that what costs work is worked out for a reader and not for none.
 * It knows nothing of the measuring that it is used for, and so has a file of its own.
 */
export interface Audience {
  /** Whether something of {@link shown} is on screen, or in an effect. */
  readonly isThere: ReadonlySignal<boolean>;
  /** A computed signal whose readers are counted; one that is only peeked at has none. */
  shown<T>(tell: () => T): ReadonlySignal<T>;
}

export function createAudience(): Audience {
  const watched = signal(0);
  // Readers come and go in the middle of drawing, where no signal may be written.
  const count = (by: number) => queueMicrotask(() => (watched.value += by));
  return {
    isThere: computed(() => watched.value > 0),
    shown: (tell) => computed(tell, { watched: () => count(1), unwatched: () => count(-1) }),
  };
}
