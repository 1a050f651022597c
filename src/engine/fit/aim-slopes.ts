import type { Shot } from '../direct/shot';
import { solveAim } from '../direct/solve-aim';
import type { Kit } from '../kit/kit';
import { kitMoved } from '../kit/kit-spread';
import type { Fit } from './fit-kit';
import { kitIndices } from './fit-layout';
import type { KitPrior } from './fit-question';

/** How the aim of a shot changes with each unknown of a fit, rad per prior standard deviation. */
export type AimSlopes = readonly number[];

/** A step either way, in prior standard deviations: wide enough to look past a kink. */
const STEP = 0.1;

/**
 * The slopes of the aims of those shots that have one on this kit.
 *
 * @param kit the prior's kit with the fit's values
 */
export function aimSlopes(
  shots: readonly Shot[],
  fit: Fit,
  prior: KitPrior,
  kit: Kit,
): readonly AimSlopes[] {
  return shots.flatMap((shot) => {
    const at = solveAim(shot, kit);
    return at.ok ? [slopesOf(shot, at.aimRad, fit, prior, kit)] : [];
  });
}

function slopesOf(shot: Shot, aimRad: number, fit: Fit, prior: KitPrior, kit: Kit): AimSlopes {
  const slopes = fit.layout.unknowns.map(() => 0);
  for (const { quantity, index } of kitIndices(prior.parts, fit.layout)) {
    const [less, more] = [-STEP, STEP].map((sds) =>
      aimOr(aimRad, shot, kitMoved(kit, prior.spread, quantity, sds)),
    );
    slopes[index] = ((more ?? aimRad) - (less ?? aimRad)) / (2 * STEP);
  }
  return slopes;
}

function aimOr(otherwise: number, shot: Shot, kit: Kit): number {
  const result = solveAim(shot, kit);
  return result.ok ? result.aimRad : otherwise;
}

/** Variance of an aim that a covariance of the unknowns leaves, rad². */
export function aimVariance(slopes: AimSlopes, covariance: readonly (readonly number[])[]): number {
  return slopes.reduce((sum, slope, i) => {
    if (slope === 0) return sum;
    const row = covariance[i] ?? [];
    return sum + slope * slopes.reduce((inner, other, j) => inner + other * (row[j] ?? 0), 0);
  }, 0);
}
