/** Taps closer together than this, ms, are one trembling finger. Common practice, no source. */
const DOUBLE_TAP_MS = 150;

/** A stopwatch worked by taps. */
export type TapTimer =
  | { readonly kind: 'idle' }
  | { readonly kind: 'running'; readonly startedMs: number }
  | { readonly kind: 'stopped'; readonly seconds: number };

/** Before the first tap; also what to begin again with. */
export const IDLE_TIMER: TapTimer = { kind: 'idle' };

/**
 * The timer after a tap: the first starts it, the second stops it. A stopped one keeps its time
 * whatever is tapped, so that no slip of the finger loses a reading. A tap that comes too soon, or
 * from before the start, is as good as none.
 *
 * @param timeStampMs `timeStamp` of the event, best a `pointerdown`: monotonic, and taken when the
 *   finger came down and not when the page got round to it
 */
export function tapped(timer: TapTimer, timeStampMs: number): TapTimer {
  if (timer.kind === 'stopped' || !Number.isFinite(timeStampMs)) return timer;
  if (timer.kind === 'idle') return { kind: 'running', startedMs: timeStampMs };
  const passedMs = timeStampMs - timer.startedMs;
  return passedMs >= DOUBLE_TAP_MS ? { kind: 'stopped', seconds: passedMs / 1000 } : timer;
}
