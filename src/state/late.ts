import { batch, type ReadonlySignal, signal } from '@preact/signals';
import { createRetries } from '../offline/retries';

/** A part of the app that comes once the first answer stands. */
export interface Late<T> {
  /** Null until it has come. */
  readonly here: ReadonlySignal<T | null>;
  /** Whether it could not be had; it is tried again by itself. */
  readonly isAway: ReadonlySignal<boolean>;
  /** Has it come; null where it cannot be had just now. Never rejects. */
  fetch(): Promise<T | null>;
}

/**
 * What cannot be had is tried again, more and more seldom, and as soon as there is a network.
 * @param page hears of the network
 */
export function createLate<T>(load: () => Promise<T>, page: EventTarget): Late<T> {
  const here = signal<T | null>(null);
  const isAway = signal(false);
  let coming: Promise<T | null> | null = null;
  const retries = createRetries(() => void fetch());

  async function attempt(): Promise<T | null> {
    retries.callOff();
    try {
      const found = await load();
      batch(() => {
        here.value = found;
        isAway.value = false;
      });
    } catch {
      isAway.value = true;
      retries.again();
    }
    coming = null;
    return here.peek();
  }
  function fetch(): Promise<T | null> {
    if (here.peek() !== null) return Promise.resolve(here.peek());
    coming ??= attempt();
    return coming;
  }

  page.addEventListener('online', () => {
    if (isAway.peek()) void fetch();
  });
  return { here, isAway, fetch };
}

/** Fetches one part after the other, each when the page has nothing else to do. */
export async function fetchWhenIdle(
  parts: readonly Late<unknown>[],
  idle: () => Promise<void>,
): Promise<void> {
  for (const part of parts) {
    await idle();
    await part.fetch();
  }
}
