import type { Parsed } from './parsed';

/*
 * The ghost ball's centre lies 2R behind the object ball's on the target line, so with d from the
 * cue ball to the ghost ball and L between the balls, L² = d² + 4R² + 4R·d·cos φ. Both ways are
 * written with sums of positive terms only: nothing cancels when the balls nearly touch.
 */

/**
 * Surface to surface, m, from cue ball to object ball.
 * @param distanceM cue-ball centre to ghost-ball centre, not negative.
 * @param cutRad either way, 90° at most.
 */
export function ballToBallGapM(
  distanceM: number,
  cutRad: number,
  ballRadiusM: number,
): Parsed<number> {
  const refusal = refuse(distanceM, cutRad);
  if (refusal) return refusal;
  const twoR = 2 * ballRadiusM;
  const ghostAlong = twoR * Math.cos(cutRad);
  const centresM = Math.hypot(distanceM + ghostAlong, twoR * Math.sin(cutRad));
  return { ok: true, value: (distanceM * (distanceM + 2 * ghostAlong)) / (centresM + twoR) };
}

/**
 * Cue-ball centre to ghost-ball centre, m.
 * @param gapM surface to surface, cue ball to object ball, not negative.
 * @param cutRad either way, 90° at most.
 */
export function ghostBallDistanceM(
  gapM: number,
  cutRad: number,
  ballRadiusM: number,
): Parsed<number> {
  const refusal = refuse(gapM, cutRad);
  if (refusal) return refusal;
  const twoR = 2 * ballRadiusM;
  const ghostAlong = twoR * Math.cos(cutRad);
  const gapTerm = gapM * (gapM + 2 * twoR);
  const along = Math.sqrt(gapTerm + ghostAlong * ghostAlong);
  return { ok: true, value: gapTerm / (along + ghostAlong) };
}

function refuse(lengthM: number, cutRad: number): Parsed<never> | null {
  if (!(lengthM >= 0 && lengthM < Number.POSITIVE_INFINITY)) {
    return { ok: false, problem: 'out-of-domain', message: 'A distance is 0 or more.' };
  }
  if (!(Math.abs(cutRad) <= Math.PI / 2)) {
    return { ok: false, problem: 'out-of-domain', message: 'A cut is 90° at most.' };
  }
  return null;
}
