import type { TrialSetup } from '../../../../src/engine/fit/trials/trial';
import { DEFAULT_KIT, type Kit } from '../../../../src/engine/kit/kit';
import type { Stroke } from '../../../../src/engine/stroke/stroke';

/** Standard gravity, m/s² (exact by convention). */
export const G = 9.80665;

/** A cue without end mass, on the default bed: no squirt. */
export const NO_SQUIRT: Kit = { ...DEFAULT_KIT, massRatio: 1e9 };

/** A level stroke in the middle at 2 m/s, but for what is given. */
export function stroke(given: Partial<Stroke> = {}): Stroke {
  return { aimRad: 0, side: 0, height: 0, elevationRad: 0, speedMps: 2, ...given };
}

/** A set-up with nothing in it, but for what is given. */
export function setup(given: Partial<TrialSetup>): TrialSetup {
  return { distanceM: 0, gapM: 0, cutRad: 0, bedLengthM: 0, ...given };
}

/** How far a ball struck in the middle slides, and then rolls to rest: 12v²/49μ_s g + 25v²/98μ_r g. */
export function runOf(speedMps: number, { slideFriction, rollFriction }: Kit): number {
  const v2 = speedMps * speedMps;
  return (12 * v2) / (49 * slideFriction * G) + (25 * v2) / (98 * rollFriction * G);
}
