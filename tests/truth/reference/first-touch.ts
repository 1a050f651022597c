/** A distance that shrinks to nothing, along a stretch of time. */
export interface Closing {
  /** How far apart at an instant, m; below zero once overlapping. */
  readonly gapAt: (timeS: number) => number;
  readonly fromS: number;
  readonly toS: number;
  /** The gap never shrinks faster than this, m/s. */
  readonly speedMps: number;
}

/** Apart or not is decided to this, m: a graze less deep goes unseen. */
const FLOOR_M = 1e-9;
/** Gap below which the way ahead counts as straight, m. */
const NEAR_M = 2e-3;
const TOUCHING_M = 1e-14;

/** First instant at which the gap has closed, or null. */
export function firstTouch({ gapAt, fromS, toS, speedMps }: Closing): number | null {
  // Near its least, a gap between spheres is a parabola in time: this step sees any dip of FLOOR_M.
  const floorS = Math.sqrt(FLOOR_M * 0.05) / speedMps;
  let [beforeS, before] = [fromS, gapAt(fromS)];
  let hastyS = 0;
  while (beforeS < toS) {
    const stepS = Math.max(before / speedMps, before < NEAR_M ? hastyS : 0, floorS);
    const nextS = Math.min(toS, beforeS + stepS);
    const next = gapAt(nextS);
    if (Math.abs(next) < TOUCHING_M) return nextS;
    if (next < 0) return closeIn(gapAt, beforeS, before, nextS, next);
    // The chord reaches zero too early where the gap flattens out, so it never leaps over a touch.
    hastyS = next < before ? (next * (nextS - beforeS)) / (before - next) : 0;
    [beforeS, before] = [nextS, next];
  }
  return null;
}

/** Regula falsi with the stale end halved (Illinois), within a bracket. */
function closeIn(
  gapAt: (timeS: number) => number,
  openS: number,
  open: number,
  shutS: number,
  shut: number,
): number {
  let [aS, a, bS, b] = [openS, open, shutS, shut];
  let side = 0;
  for (let round = 0; round < 100; round++) {
    const midS = bS - (b * (bS - aS)) / (b - a);
    const mid = gapAt(midS);
    if (Math.abs(mid) < TOUCHING_M || midS === aS || midS === bS) return midS;
    if (mid > 0) {
      [aS, a] = [midS, mid];
      if (side === 1) b /= 2;
      side = 1;
    } else {
      [bS, b] = [midS, mid];
      if (side === -1) a /= 2;
      side = -1;
    }
  }
  return bS;
}
