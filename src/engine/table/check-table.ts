import { INPUT_RANGES } from '../aim/input-ranges';
import { CUSHION_RANGES, type Cushion } from '../model/cushion';
import type { Kit } from '../model/kit';
import { findKitProblem } from '../model/kit-ranges';
import { isBeyondMiscue } from '../model/miscue-limit';
import { isWithin, type Range } from '../model/range';
import { comesToRest } from '../model/roll';
import type { Stroke } from '../model/strike';
import { nearestOnCushion, newNearest } from './nearest-on-cushion';
import { placeInMouth } from './pocket-shape';
import type { PlacedBall, TableRefusal } from './table-play';
import type { TableShape } from './table-shape';

/** As many as the fullest game has, and some to spare. */
const MOST_BALLS = 24;

/** A stroke may point any way, rad. */
const STROKE_RANGES = {
  aimRad: { min: -2 * Math.PI, max: 2 * Math.PI },
  side: INPUT_RANGES.side,
  height: INPUT_RANGES.height,
  elevationRad: INPUT_RANGES.elevationRad,
  speedMps: INPUT_RANGES.speedMps,
} as const satisfies Record<keyof Stroke, Range>;

/** Room for places that are drawn touching but do not come out so, m: a quarter of a wave of light. */
const DRAWN_M = 1e-7;

/** Why a stroke cannot be played, or null where it can. */
export function checkTable(
  balls: readonly PlacedBall[],
  stroke: Stroke,
  kit: Kit,
  shape: TableShape,
  cushion: Cushion,
): TableRefusal | null {
  const problem =
    findKitProblem(kit)?.quantity ??
    outside(stroke, STROKE_RANGES) ??
    outside(cushion, CUSHION_RANGES);
  if (problem !== undefined) return refuse('out-of-range', `${problem} is out of range.`);
  if (isBeyondMiscue(stroke.side, stroke.height)) {
    return refuse('beyond-miscue-limit', 'The tip would slip off the ball.');
  }
  if (!comesToRest(kit)) return refuse('never-stops', 'On this bed a ball would roll for ever.');
  return checkBalls(balls, kit, shape, cushion);
}

function refuse(reason: TableRefusal['reason'], message: string): TableRefusal {
  return { ok: false, reason, message };
}

function outside<K extends string>(
  values: Readonly<Record<K, number>>,
  ranges: Readonly<Record<K, Range>>,
): string | undefined {
  for (const key in ranges) if (!isWithin(ranges[key], values[key])) return key;
  return undefined;
}

function checkBalls(
  balls: readonly PlacedBall[],
  kit: Kit,
  shape: TableShape,
  cushion: Cushion,
): TableRefusal | null {
  if (balls.length === 0 || balls.length > MOST_BALLS) {
    return refuse('no-balls', `There must be from 1 to ${MOST_BALLS} balls.`);
  }
  const off = balls.findIndex((ball) => !isOnBed(ball, kit, shape, cushion));
  if (off >= 0) return refuse('off-bed', `Ball ${off} does not lie free on the bed.`);
  const least = 2 * kit.ballRadiusM - DRAWN_M;
  const isClear = (ball: PlacedBall, number: number) =>
    balls.every((other, at) => at <= number || apart(ball, other) >= least);
  const overlapping = balls.findIndex((ball, number) => !isClear(ball, number));
  if (overlapping < 0) return null;
  return refuse('overlap', `Ball ${overlapping} lies in the place of another.`);
}

function apart(a: PlacedBall, b: PlacedBall): number {
  return Math.hypot(a.xM - b.xM, a.yM - b.yM);
}

/** Whether a ball lies on the bed or on a shelf, clear of cushions and not over a hole. */
export function isOnBed(
  { xM, yM }: PlacedBall,
  kit: Kit,
  shape: TableShape,
  cushion: Cushion,
): boolean {
  const within = Math.abs(xM) <= shape.widthM / 2 && Math.abs(yM) <= shape.lengthM / 2;
  const inMouth = shape.pockets.some((pocket) => {
    const { beyondM, asideM } = placeInMouth(pocket, xM, yM);
    return Math.abs(beyondM) <= pocket.mouthM && asideM <= pocket.mouthM / 2;
  });
  if (!within && !inMouth) return false;
  const falls = shape.pockets.some(
    ({ drop, dropRadiusM }) => !(Math.hypot(xM - drop.x, yM - drop.y) > dropRadiusM),
  );
  return !falls && isClearOfCushions(xM, yM, kit, shape, cushion);
}

function isClearOfCushions(
  xM: number,
  yM: number,
  kit: Kit,
  shape: TableShape,
  cushion: Cushion,
): boolean {
  const rise = cushion.noseHeight - 1;
  const leastM = kit.ballRadiusM * Math.sqrt(1 - rise * rise) - DRAWN_M;
  const nearest = newNearest();
  return shape.cushions.every((one) => {
    nearestOnCushion(one, xM, yM, nearest);
    return nearest.awayM >= leastM;
  });
}
