import type { Shot } from '../direct/shot';
import { cholesky, choleskySolve } from '../numerics/cholesky';
import { dot } from '../numerics/dot';
import { type AimSlopes, aimVariance } from './aim-slopes';
import type { Fit } from './fit-kit';
import { type Influence, spreadAhead } from './influence';
import { LEVEL_SHARE } from './trials/trial';

/** A shot of the player's, and how sure its aim is to be. */
export interface AimGoal {
  readonly shot: Shot;
  /** One standard deviation of its aim at most, rad. */
  readonly enoughRad: number;
}

/** More than a dozen are not told: so far ahead the estimate says little. */
export const MOST_TO_GO = 12;

type Matrix = readonly (readonly number[])[];

/** A trial that could be done on the way. */
export interface Wayside {
  readonly influence: Influence;
  /** How many it takes. */
  readonly strokes: number;
  /** It puts the cloth at risk. */
  readonly isRaised: boolean;
}

/** The way to an aim that is sure enough. */
export interface WayToGo {
  /** 0: it is already; null: {@link MOST_TO_GO} do not suffice. */
  readonly shots: number | null;
  /** The trial to begin with, by its place among those to choose from; -1: none helps. */
  readonly first: number;
}

/**
 * How many shots more, each time the trial that takes most of the aim's variance for its strokes, until
 * the aim is sure enough. Readings are taken to hang on the unknowns in straight lines, as they do at
 * the present estimate. A raised cue comes where nothing level takes half as much.
 *
 * @param slopes of the aim of the goal's shot
 */
export function wayToGo(
  slopes: AimSlopes,
  enoughRad: number,
  choice: readonly Wayside[],
  fit: Fit,
): WayToGo {
  const after = (covariance: Matrix) => afterBest(slopes, choice, { ...fit, covariance });
  const next = after(fit.covariance);
  let { covariance }: { covariance: Matrix } = fit;
  for (let shots = 0; shots <= MOST_TO_GO; ) {
    if (aimVariance(slopes, covariance) <= enoughRad * enoughRad) return { shots, first: next.at };
    const best = shots === 0 ? next : after(covariance);
    if (best.at < 0) break;
    shots += choice[best.at]?.strokes ?? 1;
    ({ covariance } = best);
  }
  return { shots: null, first: next.at };
}

/** The trial to do next for an aim, and what is not known once it is read. */
function afterBest(slopes: AimSlopes, choice: readonly Wayside[], fit: Fit) {
  const read = choice.map(({ influence }) => afterReading(influence, fit));
  const before = aimVariance(slopes, fit.covariance);
  const worth = choice.map(({ strokes, isRaised }, at) => {
    const share = Math.log(before / aimVariance(slopes, read[at] ?? fit.covariance));
    return (share * (isRaised ? LEVEL_SHARE : 1)) / strokes;
  });
  const most = Math.max(0, ...worth);
  const at = most > 0 ? worth.indexOf(most) : -1;
  return { at, covariance: read[at] ?? fit.covariance };
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
