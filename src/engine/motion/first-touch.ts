/** How a moving point stands to a convex set. A scratch pad that a caller owns and may use again. */
export interface Approach {
  /** How far apart they are, m; below 0 within. */
  gapM: number;
  /** Speed at which the gap closes, m/s. */
  closing: number;
  /** How fast that grows along the same line, m/s²; an upper bound will do. */
  pull: number;
  /** False where a search was given up at its cap on steps, before the touch. */
  settled: boolean;
}

/** A fresh scratch pad for {@link firstTouch}. */
export function newApproach(): Approach {
  return { gapM: 0, closing: 0, pull: 0, settled: true };
}

/** A gap this small, m, is touching: a hundredth of an atom. */
export const TOUCHING_M = 1e-12;
/**
 * Each step closes the gap as Newton's method does; a graze halves its root each time, and on a
 * tilted bed, where the pull is only known to be below a bound, a slow one takes off some per cent.
 */
const MAX_STEPS = 2000;

/**
 * When a point first touches a convex set and moves into it.
 *
 * By conservative advancement: the point must at least cross the plane that touches the set at its
 * nearest place, and on a parabola the moment of that is exact. Such a step never passes the touch,
 * and near it is Newton's, from the safe side.
 *
 * @param look writes how things stand at a time into `approach`
 * @param skimmingM where the gap hardly closes, it is taken for at least this: how deep a touch may
 *   be seen too late, and how small the steps along a surface may get
 * @returns seconds on the clock of `look`, from 0; Infinity where there is no touch by `untilS`; where
 *   `approach` is not settled, a time before which there is none
 */
export function firstTouch(
  look: (timeS: number) => void,
  approach: Approach,
  untilS: number,
  skimmingM = TOUCHING_M,
): number {
  let timeS = 0;
  approach.settled = true;
  for (let step = 0; step < MAX_STEPS; step++) {
    look(timeS);
    const { gapM, closing, pull } = approach;
    if (gapM <= TOUCHING_M && closing > 0) return timeS;
    const leastM = closing > SKIMMING_MPS ? TOUCHING_M : skimmingM;
    timeS += timeToCross(Math.max(gapM, leastM), closing, pull);
    if (!(timeS <= untilS)) return Number.POSITIVE_INFINITY;
  }
  approach.settled = false;
  return timeS;
}

/** A gap that closes more slowly than this, m/s, hardly closes. */
const SKIMMING_MPS = 1e-3;

/** Time to cover a gap from a speed towards it under a constant pull towards it; Infinity: never. */
export function timeToCross(gapM: number, speed: number, pull: number): number {
  const square = speed * speed + 2 * pull * gapM;
  if (square < 0) return Number.POSITIVE_INFINITY;
  const root = Math.sqrt(square);
  if (speed > 0) return (2 * gapM) / (speed + root);
  return pull > 0 ? (root - speed) / pull : Number.POSITIVE_INFINITY;
}
