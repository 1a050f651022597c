import { dot } from './dot';
import { clamped, diagonalOf, predictedGain, type Valley } from './valley';
import { boundedTrial, wholeStep } from './valley-step';

/** A sum of squares near a point: half of it, its gradient, and the curvature by Gauss and Newton (JᵀJ). */
export interface Curved {
  readonly cost: number;
  readonly gradient: readonly number[];
  readonly curvature: readonly (readonly number[])[];
}

/**
 * A sum of squares to be made least. It hands over normal equations rather than residuals, so that
 * whoever states it may have eliminated variables of its own.
 */
export interface LeastSquaresProblem {
  /** Half the sum of squares; Infinity (or NaN) where there is no prediction: such a step is not taken. */
  costAt(at: readonly number[]): number;
  curvedAt(at: readonly number[]): Curved;
}

/** Both ends allowed; an infinite one is no bound. */
export interface Bounds {
  readonly min: readonly number[];
  readonly max: readonly number[];
}

export interface LeastSquaresFit extends Curved {
  readonly at: readonly number[];
  /**
   * `converged`: no sum near by is less, as far as can be told. `round-limit`: still on the way down.
   * `stuck`: no step lowers the cost though the gradient is not nothing; or there is no prediction at
   * the start, and then cost is Infinity, gradient and curvature 0.
   */
  readonly outcome: 'converged' | 'round-limit' | 'stuck';
  /** Steps tried. */
  readonly rounds: number;
  readonly atBound: readonly boolean[];
}

const MAX_ROUNDS = 1000;
/** Dampings are relative to a variable's own curvature. */
const FIRST_DAMPING = 1e-2;
const LEAST_DAMPING = 1e-15;
const MOST_DAMPING = 1e15;
/** What the rounding of residuals may do to a cost, relative: more where they are small differences. */
const COST_ROUNDING = 1e-10;

/** When to leave off. */
export interface Patience {
  /** Each round asks for one cost, and for one curvature if the step is taken. */
  readonly maxRounds?: number;
  /** A saving, in the cost's own unit, that is not worth another round. */
  readonly enough?: number;
}

/** What is left to gain, below which a sum counts as least. Either is enough. */
interface Tolerance {
  /**
   * What one more whole step would save, relative to the cost: the squared cosine between residuals
   * and all that the variables can still do about them, whatever the units of either.
   */
  readonly saving: number;
  /** How far it would move a variable, relative to how far from 0 that has been. */
  readonly step: number;
}

/** The step is for sums whose least is 0, of which the saving always is a good part. */
const FINE: Tolerance = { saving: 1e-16, step: 1e-12 };
/**
 * Where no step lowers the cost: rounding, or a gradient by differences, may be why. Source of the
 * cosine of 1e-3: Bates and Watts, Technometrics 23:179 (1981) (from memory).
 */
const COARSE: Tolerance = { saving: 1e-6, step: 1e-7 };

/** Where a descent stands. */
interface Standing extends Valley {
  readonly cost: number;
  /** The furthest from 0 that each variable has been. */
  readonly reached: readonly number[];
}

interface Damping {
  readonly value: number;
  /** What it rises by if the next step fails. */
  readonly growth: number;
}

/**
 * Makes a sum of squares least by Levenberg and Marquardt's method: whole Gauss-Newton steps where
 * they lead down, shorter and steeper ones where they do not. Finds the bottom of the valley it
 * starts in. Each variable is damped by the greatest curvature it has shown, so that units do not
 * matter and no variable flies off to where it no longer does anything. Slow where residuals stay
 * large and bend much, and in valleys that wind through powers of ten.
 *
 * Sources: damping relative to the greatest curvature, Moré 1978; its rise and fall, Nielsen,
 * IMM-REP-1999-05 (both from memory).
 *
 * @param start moved into the bounds first
 * @throws RangeError for a start that is not finite, and for bounds of another length or crossed
 */
export function leastSquares(
  problem: LeastSquaresProblem,
  start: readonly number[],
  bounds: Bounds = unbounded(start),
  { maxRounds = MAX_ROUNDS, enough = 0 }: Patience = {},
): LeastSquaresFit {
  checkStart(start, bounds);
  let here = firstStanding(problem, clamped(start, bounds), bounds);
  if (here.cost === Infinity) return fitOf(here, 'stuck', 0);
  let damping: Damping = { value: FIRST_DAMPING, growth: 2 };
  for (let round = 0; round < maxRounds; round++) {
    if (leftToSave(here) <= enough || isLeast(here, FINE)) return fitOf(here, 'converged', round);
    if (damping.value > MOST_DAMPING) {
      return fitOf(here, isLeast(here, COARSE) ? 'converged' : 'stuck', round);
    }
    const trial = boundedTrial(here, damping.value);
    const lower = trial && lowerAt(problem, here, trial);
    damping = lower ? eased(damping, here, lower) : raised(damping);
    here = lower ?? here;
  }
  return fitOf(here, isLeast(here, FINE) ? 'converged' : 'round-limit', maxRounds);
}

function unbounded(start: readonly number[]): Bounds {
  return { min: start.map(() => -Infinity), max: start.map(() => Infinity) };
}

function checkStart(start: readonly number[], { min, max }: Bounds): void {
  if (min.length !== start.length || max.length !== start.length) {
    throw new RangeError(`${min.length} and ${max.length} bounds for ${start.length} variables`);
  }
  for (const [i, value] of start.entries()) {
    if (!Number.isFinite(value)) throw new RangeError(`start ${i} is ${value}, not finite`);
    const [low = 0, high = 0] = [min[i], max[i]];
    const leavesRoom = low <= high && low < Infinity && high > -Infinity;
    if (!leavesRoom) throw new RangeError(`bounds ${i} leave no room: ${low} to ${high}`);
  }
}

function firstStanding(
  problem: LeastSquaresProblem,
  at: readonly number[],
  bounds: Bounds,
): Standing {
  const none = at.map(() => 0);
  const flat = { gradient: none, curvature: at.map(() => none), stiffness: none };
  const start = { at, ...bounds, ...flat, cost: Infinity, reached: none };
  const cost = problem.costAt(at);
  return (Number.isFinite(cost) && standing(problem, start, at, cost)) || start;
}

/** Null where the problem cannot be told there. */
function standing(
  problem: LeastSquaresProblem,
  from: Standing,
  at: readonly number[],
  cost: number,
): Standing | null {
  const { gradient, curvature } = problem.curvedAt(at);
  if (![gradient, ...curvature].every((row) => row.every(Number.isFinite))) return null;
  return {
    at,
    cost,
    gradient,
    curvature,
    stiffness: greater(from.stiffness, diagonalOf(curvature)),
    min: from.min,
    max: from.max,
    reached: greater(from.reached, at.map(Math.abs)),
  };
}

function greater(a: readonly number[], b: readonly number[]): number[] {
  return a.map((value, i) => Math.max(value, b[i] ?? value));
}

/**
 * Null where the trial is no lower. Near the bottom the cost tells steps apart only to the square root
 * of its rounding; there it may round up if what is left to save shrinks.
 */
function lowerAt(
  problem: LeastSquaresProblem,
  here: Standing,
  trial: readonly number[],
): Standing | null {
  if (!trial.every(Number.isFinite) || !(predictedGain(here, trial) > 0)) return null;
  const cost = problem.costAt(trial);
  if (!(cost > -Infinity && cost <= here.cost + COST_ROUNDING * Math.abs(here.cost))) return null;
  const there = standing(problem, here, trial, cost);
  if (there === null || cost < here.cost) return there;
  return leftToSave(there) < leftToSave(here) / 4 ? there : null;
}

/** Where the parabola told the saving well the damping falls, to a third at most; else it rises. */
function eased({ value }: Damping, here: Standing, lower: Standing): Damping {
  const saved = here.cost - lower.cost;
  const kept = saved > 0 ? saved / predictedGain(here, lower.at) : 0.5;
  const factor = Math.max(1 / 3, 1 - (2 * kept - 1) ** 3);
  return { value: Math.max(LEAST_DAMPING, value * factor), growth: 2 };
}

function raised({ value, growth }: Damping): Damping {
  return { value: value * growth, growth: 2 * growth };
}

function isLeast(here: Standing, tolerance: Tolerance): boolean {
  const step = wholeStep(here);
  if (step === null) return false;
  const isShort = (length: number, i: number) =>
    Math.abs(length) <= tolerance.step * (here.reached[i] ?? 0);
  return leftToSave(here) <= tolerance.saving * Math.abs(here.cost) || step.every(isShort);
}

/** By one more whole step, were the parabola all there is. */
function leftToSave(here: Standing): number {
  const step = wholeStep(here);
  return step === null ? Infinity : -dot(here.gradient, step) / 2;
}

function fitOf(
  { at, min, max, cost, gradient, curvature }: Standing,
  outcome: LeastSquaresFit['outcome'],
  rounds: number,
): LeastSquaresFit {
  const atBound = at.map((value, i) => value === min[i] || value === max[i]);
  return { at, cost, gradient, curvature, outcome, rounds, atBound };
}
