import { type HeldShot, type MissOrLost, missOfStroke, type StrokeInputs } from '../goal/held-shot';
import {
  KIT_QUANTITIES,
  type KitCorrelation,
  type KitQuantity,
  type KitSpread,
  kitMoved,
} from '../kit/kit-spread';
import { cholesky } from '../numerics/cholesky';
import { latticePoint } from '../numerics/lattice';
import { normalQuantile } from '../numerics/normal';
import { drawnInputs, type Normal, turnedBy } from './drawn-inputs';
import { shareAlong } from './share-along';
import type { StrokeProfile } from './stroke-profile';

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
const SAMPLED = KIT_QUANTITIES.filter((quantity) => !SLOPES.includes(quantity));
/** Speed, sideways tip, height, elevation and slope; then the kit. */
const FIRST_DIMENSIONS = 5;

/**
 * The chance that the ball goes when a player with this profile plays these inputs, counting what
 * is not known of the kit. Everything but the cue's direction is drawn from an even lattice, always
 * the same one; along the direction (and what of the tip goes with it) the chance of each draw is
 * worked out, not drawn, so that the answer moves smoothly with the shot.
 *
 * @param correlation left out: the quantities of the kit are independent
 */
export function chanceOf(
  held: HeldShot,
  inputs: StrokeInputs,
  profile: StrokeProfile,
  spread: KitSpread,
  correlation?: KitCorrelation,
): Chance {
  const ties = tiesOf(correlation);
  const missPerSd = slopeAlong(held, inputs, profile);
  const tiltSd = tiltMissSd(held, inputs, spread);
  const copies = Array.from({ length: COPIES }, (_, copy) => {
    let sum = 0;
    for (let point = 0; point < POINTS; point++) {
      const normal = (dimension: number) => normalQuantile(latticePoint(point, dimension, copy));
      const drawn = drawnInputs(held.kit, inputs, profile, normal);
      const drawnHeld = { ...held, kit: drawKit(held, spread, ties, normal) };
      const tilt = tiltSd * normal(4);
      sum += shareAlong(
        (sds) => plusTilt(missAlong(drawnHeld, drawn, profile, sds), tilt),
        missPerSd,
      );
    }
    return sum / POINTS;
  });
  const share = copies.reduce((sum, copy) => sum + copy, 0) / COPIES;
  const square = copies.reduce((sum, copy) => sum + (copy - share) ** 2, 0);
  const sampling = Math.sqrt(square / (COPIES * (COPIES - 1)));
  return { share, error: Math.hypot(sampling, SECANT_ERROR) };
}

/** How independent draws make up those of the sampled quantities: rows of a Cholesky factor. */
type Ties = readonly (readonly number[])[];

/** Null where the quantities are independent. */
function tiesOf(correlation: KitCorrelation | undefined): Ties | null {
  if (correlation === undefined) return null;
  const at = (quantity: KitQuantity) => KIT_QUANTITIES.indexOf(quantity);
  return cholesky(SAMPLED.map((one) => SAMPLED.map((two) => correlation[at(one)]?.[at(two)] ?? 0)));
}

function drawKit(held: HeldShot, spread: KitSpread, ties: Ties | null, normal: Normal) {
  let { kit } = held;
  const alone = (index: number) => normal(FIRST_DIMENSIONS + index);
  SAMPLED.forEach((quantity, index) => {
    if (spread[quantity] === 0) return;
    const tied = ties?.[index]?.reduce((sum, share, from) => sum + share * alone(from), 0);
    kit = kitMoved(kit, spread, quantity, tied ?? alone(index));
  });
  return kit;
}

/** The miss with the cue's direction off by so many standard deviations, the tip going with it. */
function missAlong(
  held: HeldShot,
  inputs: StrokeInputs,
  profile: StrokeProfile,
  sds: number,
): MissOrLost {
  return missOfStroke(held, turnedBy(held.kit, inputs, profile, sds));
}

/** A step along the direction, in standard deviations, for a first slope. */
const FIRST_LOOK = 0.02;

function slopeAlong(held: HeldShot, inputs: StrokeInputs, profile: StrokeProfile): number {
  const left = missAlong(held, inputs, profile, -FIRST_LOOK);
  const right = missAlong(held, inputs, profile, FIRST_LOOK);
  if (typeof left !== 'number' || typeof right !== 'number') return Number.NaN;
  return (right - left) / (2 * FIRST_LOOK);
}

/** Standard deviation of the miss that the unknown tilt of the bed leaves. */
function tiltMissSd(held: HeldShot, inputs: StrokeInputs, spread: KitSpread): number {
  const squares = SLOPES.filter((slope) => spread[slope] > 0).map((slope) => {
    const [less, more] = [-1, 1].map((sds) =>
      missOfStroke({ ...held, kit: kitMoved(held.kit, spread, slope, sds) }, inputs),
    );
    return typeof less === 'number' && typeof more === 'number' ? ((more - less) / 2) ** 2 : 0;
  });
  return Math.sqrt(squares.reduce((sum, square) => sum + square, 0));
}

function plusTilt(miss: MissOrLost, tilt: number): MissOrLost {
  return typeof miss === 'number' ? miss + tilt : miss;
}
