import type { BallState } from '../../ball/ball-state';
import { afterCushion } from '../../impacts/cushion';
import { strike } from '../../impacts/strike';
import type { Kit } from '../../kit/kit';
import { ballCrossing, lineCrossing } from '../../motion/line-crossing';
import { runOf } from '../../motion/run';
import type { Stroke } from '../../stroke/stroke';
import { BOTH_SIDES, CENTRE_HIT, ROLLS_AT_ONCE, setup, spoken } from './set-up';
import type { Readings, Trial, TrialBed, TrialSetup } from './trial';
import { TRIAL_TRAITS } from './trial-traits';

/** Diamonds of a long rail, from the break end. */
const LENGTH = 8;
const FROM_DIAMOND = 1;
const AT_DIAMOND = 2;
const WORDS = ['medium', 'firm'] as const;

/**
 * A ball that rolls from the middle of the first diamonds at the second of a long rail: where it
 * touches the other long rail tells the friction of the cushions, and what they give back.
 */
export const ANGLE = {
  name: 'angle',
  ...TRIAL_TRAITS.angle,
  predict: predictArrival,
  shots: (bed) => BOTH_SIDES.flatMap((side) => WORDS.map((word) => shotAt(bed, side, word))),
  hangsOn: ['cutRad', 'distanceM', 'bedLengthM'],
  headingOf: headingAt,
} as const satisfies Trial;

/** At the point of the nose beside the diamond; a table is half as wide as it is long. */
function shotAt(bed: TrialBed, side: -1 | 1, word: (typeof WORDS)[number]) {
  const asideM = bed.lengthM / 4;
  const upM = ((AT_DIAMOND - FROM_DIAMOND) * bed.lengthM) / LENGTH;
  const cutRad = side * Math.atan2(upM, asideM);
  const distanceM = (asideM - bed.ballRadiusM) / Math.cos(cutRad);
  return {
    stroke: {
      ...CENTRE_HIT,
      headingRad: headingAt(cutRad),
      height: ROLLS_AT_ONCE,
      ...spoken(word),
    },
    setup: setup(bed.lengthM, { cutRad, distanceM }),
  };
}

/** A quarter turn from the way up the table to the rail, less what the ball comes in askew. */
function headingAt(cutRad: number): number {
  return railSide(cutRad) * (Math.PI / 2) - cutRad;
}

/** The rail played at: 1 on the right, −1 on the left. */
function railSide(cutRad: number): -1 | 1 {
  return cutRad < 0 ? -1 : 1;
}

/**
 * How far up the table from the break end the ball touches the other long rail; null where it stops
 * before. It starts in the middle, so that across the bed is twice as far as to the first rail.
 *
 * @param setup distanceM: to where the ball's centre is meant to be as it first touches
 */
function predictArrival(kit: Kit, stroke: Stroke, setup: TrialSetup): Readings | null {
  const { cutRad, bedLengthM } = setup;
  const asideM = setup.distanceM * Math.cos(cutRad);
  const first = runToRail(strike(stroke, kit), cutRad, asideM, kit);
  if (first === null) return null;
  const met = afterCushion(first, Math.sin(cutRad), Math.cos(cutRad), kit);
  const second = runToRail(met, cutRad + Math.PI, 2 * asideM, kit);
  if (second === null) return null;
  const upRad = cutRad - railSide(cutRad) * (Math.PI / 2);
  const fromM = (FROM_DIAMOND * bedLengthM) / LENGTH;
  return { upM: fromM + second.xM * Math.sin(upRad) + second.yM * Math.cos(upRad) };
}

/**
 * The ball as it comes to a rail; null where it stops before.
 *
 * @param intoRad the way square into the rail, from the straight line, right +
 */
function runToRail(ball: BallState, intoRad: number, distanceM: number, kit: Kit) {
  const run = runOf(ball, 0, kit);
  const rail = { fromXM: ball.xM, fromYM: ball.yM, alongRad: intoRad, distanceM };
  const crossing = lineCrossing(run, rail);
  return crossing && ballCrossing(run, crossing);
}
