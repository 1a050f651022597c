import { DEGREES, degreesOf, radOf } from './angle-degrees';
import { ballHitOfCut, cutOfBallHit } from './ball-hit';
import type { Parsed } from './parsed';
import type { UnitFacts } from './unit-facts';
import type { CutUnit } from './unit-names';

export const CUT_UNITS: Readonly<Record<CutUnit, UnitFacts>> = {
  degrees: { ...DEGREES, fineStep: 1, coarseStep: 5 },
  'ball-hit': {
    symbol: 'ball',
    name: 'share of the object ball covered',
    spaced: true,
    fineStep: 0.01,
    coarseStep: 0.125,
    decimals: 2,
    leastDecimals: 0,
    eighths: true,
  },
};

/** The size of a cut in the given unit. Its direction, left or right, is told apart. */
export function cutSizeInUnit(cutRad: number, unit: CutUnit): number {
  return unit === 'degrees' ? degreesOf(Math.abs(cutRad)) : ballHitOfCut(cutRad);
}

/**
 * The size of a cut, rad, 0 to π/2, from a figure in the given unit. Refuses a figure that is no
 * cut: negative or over 90°, or a ball hit outside 0 to 1.
 */
export function cutSizeInRad(size: number, unit: CutUnit): Parsed<number> {
  if (unit === 'ball-hit') return cutOfBallHit(size);
  if (size >= 0 && size <= 90) return { ok: true, value: radOf(size) };
  return { ok: false, problem: 'out-of-domain', message: 'A cut is between 0° and 90°.' };
}
