import { type MissOrLost, missAt, type Task } from '../goal/task';
import type { Kit } from '../kit/kit';
import { type KitCorrelation, type KitQuantity, type KitSpread, kitMoved } from '../kit/kit-spread';
import { latticePoint } from '../numerics/lattice';
import { normalQuantile } from '../numerics/normal';
import type { Stroke } from '../stroke/stroke';
import { drawKit, tiesOf } from './drawn-kit';
import { drawnStroke, turnedBy } from './drawn-stroke';
import { shareAlong } from './share-along';
import type { StrokeProfile } from './stroke-profile';
import { whoPlays } from './who-plays';

/** How often the ball goes. */
export interface Chance {
  /** 0 to 1. */
  readonly share: number;
  /** Standard error of the share: from sampling, and an allowance for the straight line taken. */
  readonly error: number;
}

/** Copies of the lattice, and points in each. */
const COPIES = 4;
const POINTS = 32;
/** What finding the window of each draw by secant steps may cost, as a share. */
const SECANT_ERROR = 0.005;

/** A tilted bed costs far more to play; its effect on the miss is small and taken as straight. */
const SLOPES: readonly KitQuantity[] = ['bedSlopeAlong', 'bedSlopeRight'];
/**
 * The chance that the ball goes when a player with this profile plays these inputs, counting what
 * is not known of the kit. Everything but the cue's direction is drawn from an even lattice, always
 * the same one; along the direction (and what of the tip goes with it) the chance of each draw is
 * worked out, not drawn, so that the answer moves smoothly with the shot. Where several may be the
 * player they are drawn along, each as often, with a cue of their own: it is the mean of their chances.
 *
 * @param meant with its solved aim on the known kit; what is off shot after shot goes by the player
 * @param correlation left out: the quantities of the kit are independent
 */
export function chanceOf(
  task: Task,
  known: Kit,
  meant: Stroke,
  player: StrokeProfile,
  spread: KitSpread,
  correlation?: KitCorrelation,
): Chance {
  const who = whoPlays(meant, player, known, spread, task.thinSide, COPIES * POINTS);
  const { stroke, profile, kit } = who.middle;
  const sampled = task.quantities.filter(
    (quantity) => !SLOPES.includes(quantity) && who.isDrawn(quantity),
  );
  const ties = tiesOf(sampled, correlation);
  const missPerSd = slopeAlong(task, kit, stroke, profile);
  const tiltSd = tiltMissSd(task, kit, stroke, spread);
  const copies = Array.from({ length: COPIES }, (_, copy) => {
    let sum = 0;
    for (let point = 0; point < POINTS; point++) {
      const normal = (dimension: number) => normalQuantile(latticePoint(point, dimension, copy));
      const one = who.at(point * COPIES + copy);
      const drawn = drawnStroke(one.kit, one.stroke, one.profile, normal);
      const drawnKit = drawKit(one.kit, spread, sampled, ties, normal);
      const tilt = tiltSd * normal(4);
      sum += shareAlong(
        (sds) => plusTilt(missAlong(task, drawnKit, drawn, one.profile, sds), tilt),
        missPerSd * (one.profile.directionRad / profile.directionRad),
      );
    }
    return sum / POINTS;
  });
  const share = copies.reduce((sum, copy) => sum + copy, 0) / COPIES;
  const square = copies.reduce((sum, copy) => sum + (copy - share) ** 2, 0);
  const sampling = Math.sqrt(square / (COPIES * (COPIES - 1)));
  return { share, error: Math.hypot(sampling, SECANT_ERROR) };
}

/** The miss with the cue's direction off by so many standard deviations, the tip going with it. */
function missAlong(
  task: Task,
  kit: Kit,
  stroke: Stroke,
  profile: StrokeProfile,
  sds: number,
): MissOrLost {
  return missAt(task, kit, turnedBy(kit, stroke, profile, sds));
}

/** A step along the direction, in standard deviations, for a first slope. */
const FIRST_LOOK = 0.02;

function slopeAlong(task: Task, kit: Kit, stroke: Stroke, profile: StrokeProfile): number {
  const left = missAlong(task, kit, stroke, profile, -FIRST_LOOK);
  const right = missAlong(task, kit, stroke, profile, FIRST_LOOK);
  if (typeof left !== 'number' || typeof right !== 'number') return Number.NaN;
  return (right - left) / (2 * FIRST_LOOK);
}

/** Standard deviation of the miss that the unknown tilt of the bed leaves. */
function tiltMissSd(task: Task, kit: Kit, stroke: Stroke, spread: KitSpread): number {
  const squares = SLOPES.filter((slope) => spread[slope] > 0).map((slope) => {
    const [less, more] = [-1, 1].map((sds) =>
      missAt(task, kitMoved(kit, spread, slope, sds), stroke),
    );
    return typeof less === 'number' && typeof more === 'number' ? ((more - less) / 2) ** 2 : 0;
  });
  return Math.sqrt(squares.reduce((sum, square) => sum + square, 0));
}

function plusTilt(miss: MissOrLost, tilt: number): MissOrLost {
  return typeof miss === 'number' ? miss + tilt : miss;
}
