import type { Shot } from '../direct/shot';
import { cholesky, choleskySolve } from '../numerics/cholesky';
import { dot } from '../numerics/dot';
import { type AimSlopes, aimVariance } from './aim-slopes';
import type { Fit } from './fit-kit';
import { type Influence, spreadAhead } from './influence';

/** A shot of the player's, and how sure its aim is to be. */
export interface AimGoal {
  readonly shot: Shot;
  /** One standard deviation of its aim at most, rad. */
  readonly enoughRad: number;
}

/** More than a dozen are not told: so far ahead the estimate says little. */
export const MOST_TO_GO = 12;

type Matrix = readonly (readonly number[])[];

/**
 * How many shots more, each time the one that takes most of the aim's variance, until the aim is sure
 * enough; 0: it is already. Readings are taken to hang on the unknowns in straight lines, as they do
 * at the present estimate.
 *
 * @param slopes of the aim of the goal's shot
 * @param influences of the shots there are to choose from
 * @returns null where {@link MOST_TO_GO} do not suffice
 */
export function shotsToGo(
  slopes: AimSlopes,
  enoughRad: number,
  influences: readonly Influence[],
  fit: Fit,
): number | null {
  let { covariance }: { covariance: Matrix } = fit;
  for (let shots = 0; shots <= MOST_TO_GO; shots++) {
    if (aimVariance(slopes, covariance) <= enoughRad * enoughRad) return shots;
    covariance = afterBest(slopes, influences, { ...fit, covariance });
  }
  return null;
}

/** What is not known once the shot is read that takes most of an aim's variance. */
function afterBest(slopes: AimSlopes, influences: readonly Influence[], fit: Fit): Matrix {
  const read = influences.map((influence) => afterReading(influence, fit));
  return read.reduce<Matrix>(
    (best, one) => (aimVariance(slopes, one) < aimVariance(slopes, best) ? one : best),
    fit.covariance,
  );
}

/** C − CH'S⁻¹HC, S being the spread of the readings. */
function afterReading(influence: Influence, fit: Fit): Matrix {
  const { covariance } = fit;
  const factor = cholesky(spreadAhead(influence, fit));
  if (factor === null) return covariance;
  const tied = influence.perUnknown.map((row) => covariance.map((line) => dot(line, row)));
  const columns = covariance.map((_, i) => tied.map((line) => line[i] ?? 0));
  const solved = columns.map((column) => choleskySolve(factor, column));
  return covariance.map((line, i) =>
    line.map((value, j) => value - dot(columns[i] ?? [], solved[j] ?? [])),
  );
}
