/** How long to wait before the next try, ms; twice as long each time. */
const FIRST_WAIT_MS = 1000;
const LONGEST_WAIT_MS = 60_000;

/** Tries again what a network or a storage did not give, more and more seldom. */
export interface Retries {
  /** Tries once more after a wait, unless a try is waited for already. */
  again(): void;
  /** Waits for none any more: it is being tried. */
  callOff(): void;
  /** It worked: should it fail once more, the first wait is short again. */
  startOver(): void;
}

export function createRetries(work: () => void): Retries {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let waitMs = FIRST_WAIT_MS;
  return {
    again() {
      if (timer !== undefined) return;
      timer = setTimeout(() => {
        timer = undefined;
        work();
      }, waitMs);
      waitMs = Math.min(LONGEST_WAIT_MS, 2 * waitMs);
    },
    callOff() {
      clearTimeout(timer);
      timer = undefined;
    },
    startOver() {
      waitMs = FIRST_WAIT_MS;
    },
  };
}
