import { STANDARD_GRAVITY } from '../engine/ball/gravity';
import { restitutionAt } from '../engine/impacts/restitution-at';
import type { Kit } from '../engine/kit/kit';
import { bracketedRoot } from '../engine/numerics/bracketed-root';
import { squareRebound } from './square-rebound';

/** What a ball runs on, taken as level. */
export interface RunBed {
  /** Nose to nose. */
  readonly tableLengthM: number;
  readonly kit: Kit;
}

/**
 * How far speeds run, and what speed runs so far. It takes the law of cushions, so it comes later
 * than the first answer where nobody has speeds told in lengths.
 */
export interface TableRuns {
  readonly lengthsRun: typeof lengthsRun;
  readonly speedOfRun: typeof speedOfRun;
}

/** A cloth on which sliding is no harder than rolling would give back all. */
const MOST_GIVEN_BACK = 0.95;
/** More cushions than any ball reaches. */
const MOST_CUSHIONS = 200;
/** How near a run has to come to its length, in table lengths. */
const NEAR = 1e-9;

/**
 * How many table lengths a ball runs that starts rolling from one end, cushions counted. A length is
 * from cushion to cushion, so that whole numbers are cushions met.
 *
 * What a ball of speed v has left to roll is v²/(2 μ_r g). Off a cushion it first slides, with μ_s g
 * against it, from what `afterCushion` leaves it to what rolls of that. That is exact as long as it
 * rolls before the next one; a harder ball (from about 4 m/s on nine feet) would still slide there,
 * and goes further. Where a cushion loses so much at speed that a harder ball would roll back slower
 * (above 5 m/s on an ordinary one) no more is taken for lost: a unit has to grow with speed.
 */
export function lengthsRun(speedMps: number, bed: RunBed): number {
  const [acrossM, slowing] = [acrossOf(bed), slowingOf(bed)];
  const least = leastRestitution(bed.kit);
  let leftM = (speedMps * speedMps) / (2 * slowing);
  let cushions = 0;
  while (leftM > acrossM && cushions < MOST_CUSHIONS) {
    leftM = givenBackM(leftM - acrossM, slowing, bed.kit, least);
    cushions += 1;
  }
  return cushions + leftM / acrossM;
}

/** The speed of a ball that runs so many lengths, m/s: undoes {@link lengthsRun}. */
export function speedOfRun(lengths: number, bed: RunBed): number {
  const missAt = (mps: number) => lengthsRun(mps, bed) - lengths;
  let least = Math.sqrt(2 * slowingOf(bed) * Math.min(lengths, 1) * acrossOf(bed));
  if (!(missAt(least) < -NEAR)) return least;
  let most = 2 * least;
  while (missAt(most) < 0) [least, most] = [most, 2 * most];
  return bracketedRoot(missAt, least, missAt(least), most, missAt(most), 0, NEAR).x;
}

export const TABLE_RUNS: TableRuns = { lengthsRun, speedOfRun };

/** From where a ball's centre turns to where it turns again, m. */
function acrossOf({ tableLengthM, kit }: RunBed): number {
  return tableLengthM - 2 * kit.ballRadiusM;
}

/** m/s² */
function slowingOf({ kit }: RunBed): number {
  return kit.rollFriction * STANDARD_GRAVITY;
}

/** The restitution at which the speed of rolling back, v (p + q e(v)), would turn; e as it falls. */
function leastRestitution(kit: Kit): number {
  const { restitution, lossPerMps, lossFromMps } = kit.cushion;
  const [dead, livelier] = DEAD.map((e) => -metWith(e, 1, kit).rolls) as [number, number];
  const q = (livelier - dead) / (DEAD[1] - DEAD[0]);
  const p = dead - q * DEAD[0];
  return Math.min(restitution, (restitution + lossPerMps * lossFromMps - p / q) / 2 + MARGIN);
}

/** It hangs on e by two straight lines, not one. */
const MARGIN = 0.05;
/** Where the speed of rolling back hangs on restitution the most. */
const DEAD = [0.5, 0.6] as const;

/** The speeds with which a ball that rolls squarely into a cushion leaves it, and rolls again. */
function metWith(restitution: number, mps: number, kit: Kit) {
  return squareRebound(mps, { ...kit, cushion: { ...kit.cushion, restitution, lossPerMps: 0 } });
}

/** What a ball has left to roll, slide counted, once a cushion has sent it back; m. */
function givenBackM(leftM: number, slowing: number, kit: Kit, least: number): number {
  const mps = Math.sqrt(2 * slowing * leftM);
  const restitution = Math.max(least, restitutionAt(kit.cushion, mps));
  const { leaves, rolls } = metWith(restitution, mps, kit);
  const slidM = (leaves * leaves - rolls * rolls) / (2 * kit.slideFriction * STANDARD_GRAVITY);
  return Math.min(MOST_GIVEN_BACK * leftM, (rolls * rolls) / (2 * slowing) + slidM);
}
