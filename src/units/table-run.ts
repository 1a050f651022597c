import { STANDARD_GRAVITY } from '../engine/ball/gravity';

/** What a ball runs on, level. */
export interface RunBed {
  /** Nose to nose. */
  readonly tableLengthM: number;
  readonly ballRadiusM: number;
  readonly rollFriction: number;
  readonly slideFriction: number;
}

/**
 * Of its speed, what a ball that rolls squarely into a cushion has as it leaves it, and as it rolls
 * again: what the engine's `afterCushion` makes of it on an ordinary cloth. Frictions from 0.1 to
 * 0.4 move the first by 0.04 and the second by 0.006.
 */
const LEAVES = 0.96;
const ROLLS_AGAIN = 0.6155;

/** A cloth on which sliding is no harder than rolling would give back all. */
const MOST_GIVEN_BACK = 0.95;
/** More cushions than any ball reaches. */
const MOST_CUSHIONS = 200;

/**
 * How many table lengths a ball runs that starts rolling from one end, cushions counted. A length is
 * from cushion to cushion, so that whole numbers are cushions met.
 *
 * A closed form: what a ball of speed v has left to roll is v²/(2 μ_r g). Off a cushion it first
 * slides, with μ_s g against it, from {@link LEAVES} v to {@link ROLLS_AGAIN} v, so that it has a
 * fixed share of what it had as it met it. That is exact as long as it rolls before the next one;
 * a harder ball (from about 4 m/s on nine feet) would still slide there, and goes further.
 */
export function lengthsRun(speedMps: number, bed: RunBed): number {
  const [acrossM, share] = [acrossOf(bed), givenBack(bed)];
  let leftM = (speedMps * speedMps) / (2 * slowing(bed));
  let cushions = 0;
  while (leftM > acrossM && cushions < MOST_CUSHIONS) {
    leftM = (leftM - acrossM) * share;
    cushions += 1;
  }
  return cushions + leftM / acrossM;
}

/** The speed of a ball that runs so many lengths, m/s: undoes {@link lengthsRun}. */
export function speedOfRun(lengths: number, bed: RunBed): number {
  const [acrossM, share] = [acrossOf(bed), givenBack(bed)];
  const cushions = Math.min(MOST_CUSHIONS, Math.floor(lengths));
  let leftM = (lengths - cushions) * acrossM;
  for (let cushion = 0; cushion < cushions; cushion += 1) leftM = leftM / share + acrossM;
  return Math.sqrt(2 * slowing(bed) * leftM);
}

/** From where a ball's centre turns to where it turns again, m. */
function acrossOf({ tableLengthM, ballRadiusM }: RunBed): number {
  return tableLengthM - 2 * ballRadiusM;
}

/** m/s² */
function slowing({ rollFriction }: RunBed): number {
  return rollFriction * STANDARD_GRAVITY;
}

/** Of the way a ball had left as it met a cushion, what it has as it leaves it. */
function givenBack({ rollFriction, slideFriction }: RunBed): number {
  const slid = (LEAVES * LEAVES - ROLLS_AGAIN * ROLLS_AGAIN) * (rollFriction / slideFriction);
  return Math.min(MOST_GIVEN_BACK, ROLLS_AGAIN * ROLLS_AGAIN + slid);
}
