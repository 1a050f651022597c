import { dot } from '../numerics/dot';
import type { Curved, LeastSquaresProblem } from '../numerics/least-squares';
import { type Botching, type Judged, judged } from './botched';
import { type ShotEvidence, shotEvidence, solveSpread, sumOfSquares } from './shot-evidence';
import { type ShotResiduals, withAt } from './shot-residuals';

/** What stands for the squares of a shot that the kit says cannot have happened: 20 deviations. */
const IMPOSSIBLE_SQUARES = 400;
/** Step for derivatives, in prior standard deviations: a shorter one meets a cushion's increments. */
const STEP = 0.15;

/** Evidence and verdict of a shot. */
export interface WeighedShot {
  /** Null where the kit leaves no reading. */
  readonly evidence: ShotEvidence | null;
  readonly verdict: Judged;
}

/** What holds for all shots while the unknowns are sought. */
export interface FitMood {
  readonly botching: Botching;
  /** How far shots stray compared with what was assumed, squared. */
  readonly stretch2: number;
  /** What the spread of the readings adds to the cost, per unknown: see `spread-tilt`. */
  readonly tilt: readonly number[];
}

/** Weighs a shot at some values of the unknowns. */
export type Weigh = (
  shot: ShotResiduals,
  unknowns: readonly number[],
  mood: FitMood,
) => WeighedShot;

/**
 * Weighs shots, each time from where the last evidence of that shot was: the next is seldom far from
 * it, and found sooner from there.
 *
 * @param onStep told of each
 */
export function createWeigh(onStep: () => void): Weigh {
  const earlier = new Map<ShotResiduals, { unknowns: readonly number[]; last: ShotEvidence }>();
  const evidenceAt = (shot: ShotResiduals, unknowns: readonly number[]) => {
    const known = earlier.get(shot);
    if (known?.unknowns === unknowns) return known.last;
    const evidence = shotEvidence(shot, unknowns, known?.last);
    if (evidence !== null) earlier.set(shot, { unknowns, last: evidence });
    return evidence;
  };
  return (shot, unknowns, { botching, stretch2 }) => {
    onStep();
    const evidence = evidenceAt(shot, unknowns);
    const squares = evidence === null ? IMPOSSIBLE_SQUARES : evidence.squares / stretch2;
    return { evidence, verdict: judged(squares, shot.readings, botching) };
  };
}

/**
 * Minus the logarithm of what the unknowns are worth: the shots' likelihoods and the standard
 * normal priors.
 */
export function fitProblem(
  shots: readonly ShotResiduals[],
  mood: FitMood,
  weigh: Weigh,
): LeastSquaresProblem {
  return {
    costAt: (unknowns) =>
      shots.reduce(
        (sum, shot) => sum + weigh(shot, unknowns, mood).verdict.cost,
        sumOfSquares(unknowns) / 2 + dot(mood.tilt, unknowns),
      ),
    curvedAt: (unknowns) => curvedAt(shots, unknowns, mood, weigh),
  };
}

function curvedAt(
  shots: readonly ShotResiduals[],
  unknowns: readonly number[],
  mood: FitMood,
  weigh: Weigh,
): Curved {
  let cost = sumOfSquares(unknowns) / 2 + dot(mood.tilt, unknowns);
  const gradient = unknowns.map((value, index) => value + (mood.tilt[index] ?? 0));
  const curvature = unknowns.map((_, i) => unknowns.map((_, j) => Number(i === j)));
  for (const shot of shots) {
    const { evidence, verdict } = weigh(shot, unknowns, mood);
    cost += verdict.cost;
    if (evidence === null) continue;
    const share = verdict.weight / mood.stretch2;
    const perUnknown = changePerUnknown(shot, unknowns, evidence);
    const { slope, bend } = shotCurve(perUnknown, evidence);
    shot.touches.forEach((i, a) => {
      gradient[i] = (gradient[i] ?? 0) - share * (slope[a] ?? 0);
      const row = curvature[i] ?? [];
      shot.touches.forEach((j, b) => {
        row[j] = (row[j] ?? 0) + share * (bend[a]?.[b] ?? 0);
      });
    });
  }
  return { cost, gradient, curvature };
}

/** How each reading's prediction changes with each touched unknown, strays held; by unknown. */
export function changePerUnknown(
  { at, touches }: ShotResiduals,
  unknowns: readonly number[],
  { strays, residuals }: Pick<ShotEvidence, 'strays' | 'residuals'>,
): readonly (readonly number[])[] {
  return touches.map((index) => {
    const here = unknowns[index] ?? 0;
    const less = at(withAt(unknowns, index, here - STEP), strays);
    const more = at(withAt(unknowns, index, here + STEP), strays);
    return residuals.map((value, row) => {
      if (less === null && more === null) return 0;
      const [low, high] = [less?.[row] ?? value, more?.[row] ?? value];
      return (low - high) / (less === null || more === null ? STEP : 2 * STEP);
    });
  });
}

/** Slope and bend of a good shot's log likelihood along the touched unknowns. */
function shotCurve(perUnknown: readonly (readonly number[])[], evidence: ShotEvidence) {
  const slope = perUnknown.map((column) => dot(column, evidence.residuals));
  return { slope, bend: information(perUnknown, evidence.perStray) };
}

/** J'(1 + EE')⁻¹J: Fisher's information of a shot's readings on the unknowns it touches. */
function information(
  perUnknown: readonly (readonly number[])[],
  perStray: readonly (readonly number[])[],
): number[][] {
  const weighted = perUnknown.map((column) => solveSpread(perStray, column));
  return perUnknown.map((column) => weighted.map((other) => dot(column, other)));
}
