import { type ReadonlySignal, signal } from '@preact/signals';
import { IDLE_TIMER, type TapTimer, tapped } from '../../sensors/tap-timer';

/** A stopwatch on a screen, worked by taps. */
export interface TapClock {
  readonly timer: ReadonlySignal<TapTimer>;
  /** @param timeStampMs that of the event */
  tap(timeStampMs: number): void;
  reset(): void;
}

export function createTapClock(): TapClock {
  const timer = signal<TapTimer>(IDLE_TIMER);
  return {
    timer,
    tap(timeStampMs) {
      timer.value = tapped(timer.peek(), timeStampMs);
    },
    reset() {
      timer.value = IDLE_TIMER;
    },
  };
}
