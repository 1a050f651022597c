import type { Approach } from '../motion/first-touch';

/**
 * A touch slower than this, m/s, is a push rather than a blow: two bodies pressed together part as
 * fast as they met, …
 */
export const SLOW_MPS = 1e-3;

/**
 * … and do not meet again before this has passed, s: about as long as a contact of two balls lasts
 * (from memory). So a ball held against another by its spin neither stops the clock nor, at 1 mm/s
 * and 2 g, sinks in by more than 0.6 µm.
 */
const PRESSED_S = 2e-4;

/** When a touch that comes at a time (s) is answered, given when the same two last met. */
export function answeredAt(touchS: number, closingMps: number, lastMetS: number): number {
  return closingMps > SLOW_MPS ? touchS : Math.max(touchS, lastMetS + PRESSED_S);
}

/**
 * A touch is still one this far off, m, when its time has come: the search steps this close where a
 * path only skims a surface, and a slow touch is answered late.
 */
const TOUCHED_M = 1e-6;

/** Whether two are near enough to touch, and closing. */
export function isTouch({ gapM, closing }: Approach): boolean {
  return gapM <= TOUCHED_M && closing > 0;
}
