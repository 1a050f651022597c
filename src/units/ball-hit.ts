import type { Parsed } from './parsed';

/*
 * The covered share of the object ball is 1 − |sin cut|. It is computed as 2·sin²((90° − |cut|)/2),
 * the same figure, because near a graze the difference of two nearly equal numbers would lose half
 * the digits.
 */

/** Share of the object ball covered by the cue ball: 1 full, ½ at a 30° cut, 0 a graze. */
export function ballHitOfCut(cutRad: number): number {
  const halfOfRest = Math.sin((Math.PI / 2 - Math.abs(cutRad)) / 2);
  return 2 * halfOfRest * halfOfRest;
}

/** The cut that covers this share, rad, 0 to π/2. Refuses a share outside 0 to 1. */
export function cutOfBallHit(share: number): Parsed<number> {
  if (!(share >= 0 && share <= 1)) {
    return {
      ok: false,
      problem: 'out-of-domain',
      message: 'A ball hit is between 0 (a graze) and 1 (full).',
    };
  }
  const cutRad = Math.PI / 2 - 2 * Math.asin(Math.sqrt(share / 2));
  return { ok: true, value: Math.max(0, cutRad) };
}
