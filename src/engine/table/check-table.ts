import type { Kit } from '../kit/kit';
import { findKitProblem } from '../kit/kit-numbers';
import { comesToRest } from '../motion/roll';
import { length } from '../numerics/length';
import { isWithin, type Range } from '../numerics/range';
import { isBeyondMiscue } from '../stroke/miscue-limit';
import { STROKE_RANGES, type Stroke } from '../stroke/stroke';
import { MOST_BALLS } from './most-balls';
import { nearestOnCushion, newNearest } from './nearest-on-cushion';
import { placeInMouth } from './pocket-shape';
import type { PlacedBall, TableRefusal } from './table-play';
import type { TableShape } from './table-shape';

/** A stroke may point any way, rad. */
const RANGES = {
  ...STROKE_RANGES,
  aimRad: { min: -2 * Math.PI, max: 2 * Math.PI },
} as const satisfies Record<keyof Stroke, Range>;

/** Room for places that are drawn touching but do not come out so, m: a quarter of a wave of light. */
const DRAWN_M = 1e-7;

/** Why a stroke cannot be played, or null where it can. */
export function checkTable(
  balls: readonly PlacedBall[],
  stroke: Stroke,
  kit: Kit,
  shape: TableShape,
): TableRefusal | null {
  const problem = findKitProblem(kit)?.quantity ?? outside(stroke, RANGES);
  if (problem !== undefined) return { ok: false, reason: 'out-of-range', quantity: problem };
  if (isBeyondMiscue(stroke.side, stroke.height)) {
    return { ok: false, reason: 'beyond-miscue-limit' };
  }
  if (!comesToRest(kit)) return { ok: false, reason: 'never-stops' };
  return checkBalls(balls, kit, shape);
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
): TableRefusal | null {
  if (balls.length === 0 || balls.length > MOST_BALLS) {
    return { ok: false, reason: 'no-balls' };
  }
  const off = balls.findIndex((ball) => !isOnBed(ball, kit, shape));
  if (off >= 0) return { ok: false, reason: 'off-bed', ball: off };
  const least = 2 * kit.ballRadiusM - DRAWN_M;
  const isClear = (ball: PlacedBall, number: number) =>
    balls.every((other, at) => at <= number || apart(ball, other) >= least);
  const overlapping = balls.findIndex((ball, number) => !isClear(ball, number));
  if (overlapping < 0) return null;
  return { ok: false, reason: 'overlap', ball: overlapping };
}

function apart(a: PlacedBall, b: PlacedBall): number {
  return length(a.xM - b.xM, a.yM - b.yM);
}

/** Whether a ball lies on the bed or on a shelf, clear of cushions and not over a hole. */
export function isOnBed({ xM, yM }: PlacedBall, kit: Kit, shape: TableShape): boolean {
  const within = Math.abs(xM) <= shape.widthM / 2 && Math.abs(yM) <= shape.lengthM / 2;
  const inMouth = shape.pockets.some((pocket) => {
    const { beyondM, asideM } = placeInMouth(pocket, xM, yM);
    return Math.abs(beyondM) <= pocket.mouthM && asideM <= pocket.mouthM / 2;
  });
  if (!within && !inMouth) return false;
  const falls = shape.pockets.some(
    ({ drop, dropRadiusM }) => !(length(xM - drop.x, yM - drop.y) > dropRadiusM),
  );
  return !falls && isClearOfCushions(xM, yM, kit, shape);
}

function isClearOfCushions(xM: number, yM: number, kit: Kit, shape: TableShape): boolean {
  const rise = kit.cushion.noseHeight - 1;
  const leastM = kit.ballRadiusM * Math.sqrt(1 - rise * rise) - DRAWN_M;
  const nearest = newNearest();
  return shape.cushions.every((one) => {
    nearestOnCushion(one, xM, yM, nearest);
    return nearest.awayM >= leastM;
  });
}
