import { cholesky, choleskySolve } from '../numerics/cholesky';
import { dot } from '../numerics/dot';
import { type AimSlopes, aimVariance } from './aim-slopes';
import type { Fit } from './fit-kit';
import type { FitQuantity, FitShot, KitPrior, StrokeScatter } from './fit-question';
import { type Influence, influenceAt, spreadAhead } from './influence';
import { predictedReadings, shotResiduals, withAt } from './shot-residuals';
import type { Readings } from './trials/trial';
import type { TrialShot } from './trials/trials';
import { TRIALS } from './trials/trials';

/** What a shot not yet played would teach. */
export interface Lesson {
  readonly shot: TrialShot;
  /** What its readings would be, were the fit right. */
  readonly expected: Readings;
  /** By how much it would shrink what is not known, as a logarithm, per stroke that it costs. */
  readonly worth: number;
  /** The quantity that it pins down most, as far as the aims hang on it. */
  readonly teaches: FitQuantity;
}

/** What is held while shots are compared. */
export interface Lecture {
  readonly fit: Fit;
  readonly prior: KitPrior;
  readonly scatter: StrokeScatter;
  /** How the aims of the shots that the player plays hang on the unknowns. */
  readonly aims: readonly AimSlopes[];
}

/**
 * The shots in the order of what each would teach, the best first: how much of the variance of the
 * player's aims it would take away, by Fisher's information at the present estimate. Shots that
 * would leave nothing to read are left out.
 *
 * @param onStep told of each shot
 */
export function lessons(
  shots: readonly TrialShot[],
  lecture: Lecture,
  onStep: () => void,
): readonly Lesson[] {
  const taught = shots.flatMap((shot) => {
    onStep();
    return lessonOf(shot, lecture) ?? [];
  });
  return taught.sort((a, b) => b.worth - a.worth);
}

function lessonOf(shot: TrialShot, { fit, prior, scatter, aims }: Lecture): Lesson | null {
  const blank: FitShot = { id: '', shot, readings: {}, prior, scatter };
  const expected = predictedReadings(blank, fit.layout, fit.unknowns);
  if (expected === null || !canBeRead(shot, expected)) return null;
  const taken = expectedTaken({ ...blank, readings: expected }, fit);
  if (taken === null) return null;
  const worth = (slopes: AimSlopes) => logShare(taken(slopes), aimVariance(slopes, fit.covariance));
  const ofAims = aims.reduce((sum, slopes) => sum + worth(slopes), 0) / Math.max(1, aims.length);
  const ofCloth = worth(slideFrictionOf(prior, fit));
  const worthOfAll = (1 - CLOTH_WORTH) * ofAims + CLOTH_WORTH * ofCloth;
  return {
    shot,
    expected,
    worth: worthOfAll / TRIALS[shot.trial].strokes,
    teaches: mostTaught(taken, aims, fit),
  };
}

/**
 * Beside the aims, the cloth's slide friction counts for this much by itself: draw, stun and drag
 * hang on it, whatever the aims do.
 */
const CLOTH_WORTH = 1 / 4;
const MOST_SHARE = 1 - 1e-9;

/** How far a variance shrinks, as the logarithm of the factor. */
function logShare(taken: number, before: number): number {
  return before > 0 ? -Math.log1p(-Math.min(MOST_SHARE, taken / before)) : 0;
}

/** The combination of the unknowns that is the slide friction of the kit in play alone. */
function slideFrictionOf({ parts }: KitPrior, { layout }: Fit): AimSlopes {
  const at = layout.indexOf('cloth', parts.cloth, 'slideFriction');
  return layout.unknowns.map((_, index) => Number(index === at));
}

/** Short of the cushion by this, m, an object ball is safe from reaching it. */
const SAFETY_M = 0.25;
/** A cue ball that draws back further than this, m, may come back to the hand. */
const LEAST_BACK_M = -0.3;

function canBeRead({ setup }: TrialShot, { objectBallM = 0, cueBallM = 0 }: Readings): boolean {
  const room = setup.distanceM > 0 ? setup.distanceM - SAFETY_M : Number.POSITIVE_INFINITY;
  return objectBallM < room && cueBallM > LEAST_BACK_M;
}

/** By how much something shrinks the variance of a straight combination of the unknowns. */
type Taken = (slopes: AimSlopes) => number;

/** A shot whose readings bend more than this within its strays is not worth its risk. */
const MOST_BENT = 1 + 0.7 ** 2;

/**
 * What a shot may be expected to take: the mean over the present estimate and a standard deviation
 * either side of it, as far as they move a reading. A shot that would teach much if all were just
 * so, and nothing if not, is not preferred.
 */
function expectedTaken(shot: FitShot, fit: Fit): Taken | null {
  const residuals = shotResiduals(shot, fit.layout);
  const here = influenceAt(residuals, fit.unknowns);
  if (here === null) return null;
  const around = here.perUnknown.flatMap((row) => {
    const tied = fit.covariance.map((line) => dot(line, row));
    const length = Math.sqrt(dot(tied, row));
    return [-1, 1].map((side) =>
      influenceAt(
        residuals,
        fit.unknowns.map((value, i) => value + (side * (tied[i] ?? 0)) / Math.max(length, 1e-9)),
      ),
    );
  });
  const all = [here, ...around].flatMap((influence) => influence ?? []);
  if (all.some(({ width }) => width > MOST_BENT)) return null;
  const taken = all.flatMap((influence) => takenBy(influence, fit) ?? []);
  return (slopes) => taken.reduce((sum, one) => sum + one(slopes), 0) / (1 + around.length);
}

/** (HCg)'S⁻¹(HCg), S being the spread of the readings. */
function takenBy(influence: Influence, fit: Fit): Taken | null {
  const tied = influence.perUnknown.map((row) => fit.covariance.map((line) => dot(line, row)));
  const factor = cholesky(spreadAhead(influence, fit));
  if (factor === null) return null;
  return (slopes) => {
    const known = tied.map((line) => dot(line, slopes));
    return dot(known, choleskySolve(factor, known));
  };
}

/** Where no aim counts, all unknowns of the fit count alike. */
function mostTaught(taken: Taken, aims: readonly AimSlopes[], { layout }: Fit): FitQuantity {
  const none = layout.unknowns.map(() => 0);
  const worth = layout.unknowns.map((_, index) => {
    const weight = aims.reduce((sum, slopes) => sum + (slopes[index] ?? 0) ** 2, 0);
    return (aims.length === 0 ? 1 : weight) * taken(withAt(none, index, 1));
  });
  const best = worth.indexOf(Math.max(...worth));
  return layout.unknowns[best]?.quantity ?? 'massRatio';
}
