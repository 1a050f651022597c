import {
  type Bounds,
  type LeastSquaresFit,
  leastSquares,
  type Patience,
} from '../numerics/least-squares';
import { alongCushions, cushionsAt } from './along-cushions';
import { covarianceOf } from './belief';
import { OFTEN, SELDOM } from './botched';
import { type FitLayout, layOut } from './fit-layout';
import { createWeigh, type FitMood, fitProblem, type Weigh, type WeighedShot } from './fit-problem';
import type { FitQuantity, FitShot, Parts } from './fit-question';
import { type ShotResiduals, shotResiduals } from './shot-residuals';
import { spreadCost, spreadTilt } from './spread-tilt';

/** What the readings tell of all the kits they were taken with. */
export interface Fit {
  readonly layout: FitLayout;
  /** What they are taken for, in prior standard deviations from the prior's middle. */
  readonly unknowns: readonly number[];
  /** How far they may lie from there, as a covariance: 1 on the diagonal is what was known before. */
  readonly covariance: readonly (readonly number[])[];
  readonly converged: boolean;
  readonly rounds: number;
  /** How far the shots stray, compared with what was assumed of the player: 1 is as assumed. */
  readonly stretch: number;
  readonly shots: readonly FittedShot[];
}

/** A shot where the unknowns are likeliest. */
export interface FittedShot extends WeighedShot {
  readonly asked: FitShot;
  readonly residuals: ShotResiduals;
}

/** No quantity is believed to be further than this from its prior's middle, in deviations of it. */
const FARTHEST = 5;
/** In units of log likelihood: a ten-thousandth of what one standard deviation makes. */
const PATIENCE = { maxRounds: 60, enough: 1e-4 };
/** To tell which of several starts leads lowest. */
const FIRST_LOOK = { maxRounds: 10, enough: 0.02 };
const MOOD_ROUNDS = 2;
/** The prior of the stretch is worth this many readings that stray as assumed. */
const STRETCH_PRIOR = 12;

/**
 * One joint estimate over all shots, whatever cues, cloths, balls and tables they were played with:
 * nonlinear least squares with the priors as readings of their own, the whole engine as the model,
 * each stroke's strays worked out along with it, and botched shots given little weight.
 *
 * @param more kits of which an estimate is wanted though no shot may have touched them
 * @param onStep told each time that a shot is weighed
 */
export function fitKit(
  asked: readonly FitShot[],
  more: readonly Parts[] = [],
  onStep = () => {},
): Fit {
  const layout = layOut(asked, more);
  const shots = asked.map((shot) => shotResiduals(shot, layout));
  const weigh = createWeigh(onStep);
  const seek = (
    start: readonly number[],
    mood: FitMood,
    patience: Patience = PATIENCE,
    held = -1,
  ) => leastSquares(fitProblem(shots, mood, weigh), start, boundsOf(start, held), patience);
  const none = layout.unknowns.map(() => 0);
  const places = cushionsAt(layout, more[0] ?? asked.at(-1)?.prior.parts, asked);
  const starts = startsFrom(none, layout, shots);
  const looks = starts.map((start) =>
    seek(start, { botching: OFTEN, stretch2: 1, tilt: none }, FIRST_LOOK),
  );
  let found = looks.reduce((best, other) => (other.cost < best.cost ? other : best));
  let mood: FitMood = { botching: SELDOM, stretch2: 1, tilt: none };
  for (let round = 0; round < MOOD_ROUNDS; round++) {
    mood = { ...mood, tilt: spreadTilt(shots, found.at, mood, weigh) };
    found = seek(found.at, mood);
    mood = { ...mood, stretch2: stretchSquared(shots, found, mood, weigh) };
  }
  found = seek(found.at, mood);
  const { top, point, covariance } = alongCushions(found, places, {
    seek: (start, patience, held) => seek(start, mood, patience, held),
    costOfSpread: (unknowns) => spreadCost(shots, unknowns, mood, weigh),
  });
  return {
    layout,
    unknowns: point,
    covariance,
    // Stuck is settled too: in a fold, where a ball just begins to roll as it is met.
    converged: top.outcome !== 'round-limit',
    rounds: top.rounds,
    stretch: Math.sqrt(mood.stretch2),
    shots: asked.map((shot, index) => {
      const residuals = shots[index] ?? shotResiduals(shot, layout);
      return { asked: shot, residuals, ...weigh(residuals, top.at, mood) };
    }),
  };
}

/** How far off the prior's middle the search also starts, in deviations. */
const FAR_STARTS = [-1.5, 1.5];
/** What readings may be explained by, by much of it as well as by little. */
const FOLDED: readonly FitQuantity[] = ['slideFriction', 'cushionFriction'];

/**
 * Where the search starts: from the priors' middle and, since a ball that slides and one that rolls
 * are different worlds, from cloths of little and of much slide friction too.
 */
function startsFrom(
  none: readonly number[],
  { unknowns }: FitLayout,
  shots: readonly ShotResiduals[],
): (readonly number[])[] {
  const far = FOLDED.flatMap((folded) => {
    const places = unknowns.map(({ quantity }) => quantity === folded);
    const isTouched = shots.some(({ touches }) => touches.some((index) => places[index]));
    if (!isTouched) return [];
    return FAR_STARTS.map((sds) => places.map((is) => (is ? sds : 0)));
  });
  return [none, ...far];
}

/** @param held the place of an unknown that stays where it is; −1: none does */
function boundsOf(start: readonly number[], held: number): Bounds {
  const bound = (far: number) => start.map((value, index) => (index === held ? value : far));
  return { min: bound(-FARTHEST), max: bound(FARTHEST) };
}

/**
 * How far shots stray compared with what was assumed, squared: their weighed squares over the
 * readings that are not spent on the unknowns, with the assumption itself as so many readings.
 */
function stretchSquared(
  shots: readonly ShotResiduals[],
  { at, curvature }: LeastSquaresFit,
  mood: FitMood,
  weigh: Weigh,
): number {
  const covariance = covarianceOf(curvature);
  const spent = covariance.reduce((sum, row, index) => sum + 1 - (row[index] ?? 1), 0);
  let [squares, readings] = [0, 0];
  for (const shot of shots) {
    const { evidence, verdict } = weigh(shot, at, mood);
    if (evidence === null) continue;
    squares += verdict.weight * evidence.squares;
    readings += verdict.goodShare * shot.readings;
  }
  return (STRETCH_PRIOR + squares) / (STRETCH_PRIOR + Math.max(0, readings - spent));
}
