import { dot } from '../numerics/dot';
import { changePerUnknown, type FitMood, type Weigh } from './fit-problem';
import { logSpread, type ShotEvidence, slopesPerStray, solveSpread } from './shot-evidence';
import { type ShotResiduals, withAt } from './shot-residuals';

/** A step along which the spread changes by more than rounding, in prior standard deviations. */
const STEP = 0.1;

/** No shot tilts an unknown by more, per prior standard deviation: what does is a fold, not a slope. */
const STEEPEST = 0.1;

/**
 * How the logarithm of the spread of all readings, halved, changes with each unknown. Where the same
 * strays would spread the readings wider, readings near by are less of a coincidence: a likelihood
 * is over the root of the determinant of its covariance. Shot by shot that is next to nothing, but
 * it always pulls the same way, and would bias the sum of many. It changes slowly, so it is taken as
 * straight between one search and the next.
 */
export function spreadTilt(
  shots: readonly ShotResiduals[],
  unknowns: readonly number[],
  mood: FitMood,
  weigh: Weigh,
): readonly number[] {
  const tilt = unknowns.map(() => 0);
  for (const shot of shots) {
    const { evidence, verdict } = weigh(shot, unknowns, mood);
    if (evidence === null) continue;
    const slopes = spreadSlopes(shot, unknowns, evidence);
    shot.touches.forEach((index, a) => {
      const slope = Math.max(-STEEPEST, Math.min(STEEPEST, (slopes[a] ?? 0) / 2));
      tilt[index] = (tilt[index] ?? 0) + verdict.goodShare * slope;
    });
  }
  return tilt;
}

/** Half the logarithm of the spread of all readings, less what its tilt has counted of it already. */
export function spreadCost(
  shots: readonly ShotResiduals[],
  unknowns: readonly number[],
  mood: FitMood,
  weigh: Weigh,
): number {
  return shots.reduce((sum, shot) => {
    const { evidence } = weigh(shot, unknowns, mood);
    return evidence === null ? sum : sum + logSpread(evidence.perStray) / 2;
  }, -dot(mood.tilt, unknowns));
}

/** The likeliest strays go along with the unknown, by −E'(1 + EE')⁻¹J. */
function spreadSlopes(
  shot: ShotResiduals,
  unknowns: readonly number[],
  evidence: ShotEvidence,
): readonly number[] {
  const { strays, perStray } = evidence;
  const perUnknown = changePerUnknown(shot, unknowns, evidence);
  return shot.touches.map((index, a) => {
    const pull = solveSpread(perStray, perUnknown[a] ?? []);
    const [less, more] = [-STEP, STEP].map((step) => {
      const moved = withAt(unknowns, index, (unknowns[index] ?? 0) + step);
      const along = strays.map(
        (stray, k) =>
          stray -
          step *
            dot(
              pull,
              perStray.map((row) => row[k] ?? 0),
            ),
      );
      const residuals = shot.at(moved, along);
      if (residuals === null) return null;
      return logSpread(slopesPerStray((near) => shot.at(moved, near), along, residuals));
    });
    return less == null || more == null ? 0 : (more - less) / (2 * STEP);
  });
}
