import type { Kit } from '../kit/kit';
import { touchingM } from '../lie/clearances';
import { bearing, wrapped } from '../numerics/angle';
import type { PocketShape } from '../table/pocket-shape';
import type { Point } from '../table/point';
import type { TableShape } from '../table/table-shape';

/** The directions in which a ball at some place runs straight into a pocket. */
export interface OpenWay {
  /** The middle of them, over the table: 0 runs along y, right +, rad. */
  readonly alongRad: number;
  /** How far to either side of it they reach, rad. */
  readonly halfAngleRad: number;
  /** Along the middle to where the bed drops away, m. */
  readonly distanceM: number;
  /** The same for other speeds at the mouth, rising; their middles right + of this one's. */
  readonly openings?: readonly OpenAtSpeed[];
}

/** What is open to a ball that comes to the mouth at some speed. */
export interface OpenAtSpeed {
  readonly speedMps: number;
  readonly middleRad: number;
  readonly halfAngleRad: number;
}

/** A ball in the jaws may be sent in from nearly all around; wider than this is no use, rad. */
const WIDEST_RAD = Math.PI / 3;
/** What counts as open, rad: a hundredth of a degree less is closed to any player. */
const NARROWEST_RAD = 2e-4;
const LEAST_DISTANCE_M = 0.002;

/**
 * What of a pocket's mouth is open from a place: the ball's centre must pass both points of the
 * cushions by what a ball that touches them is off, so askew the mouth is narrower. Balls that
 * touch a point and still fall come on top. Null where nothing is open.
 */
export function openWay(
  from: Point,
  pocket: PocketShape,
  shape: TableShape,
  kit: Kit,
): OpenWay | null {
  const { axis } = pocket;
  const axisRad = bearing(axis.x, axis.y);
  const reachM = touchingM(kit);
  const [low, high] = pointsBeside(pocket, shape).map(({ at, roundingM, side }) => {
    const [dx, dy] = [at.x - from.x, at.y - from.y];
    const clear = Math.asin(Math.min(1, (reachM + roundingM) / Math.hypot(dx, dy)));
    return wrapped(bearing(dx, dy) - axisRad) - side * clear;
  });
  if (low === undefined || high === undefined) return null;
  const middleRad = (low + high) / 2;
  const halfAngleRad = Math.min(WIDEST_RAD, (high - low) / 2);
  if (halfAngleRad < NARROWEST_RAD || Math.abs(middleRad) >= Math.PI / 2) return null;
  const toDropM = distanceAlong(from, pocket) / Math.cos(middleRad);
  return {
    alongRad: wrapped(axisRad + middleRad),
    halfAngleRad,
    distanceM: Math.max(LEAST_DISTANCE_M, toDropM),
  };
}

/** Along the pocket's axis to where the bed drops away, m. */
function distanceAlong(from: Point, { axis, drop, dropRadiusM }: PocketShape): number {
  return (drop.x - from.x) * axis.x + (drop.y - from.y) * axis.y - dropRadiusM;
}

/** A point of a cushion before it is rounded; −1 on the left of one who looks into the pocket. */
interface CushionPoint {
  readonly at: Point;
  readonly roundingM: number;
  readonly side: number;
}

/** The left one first. */
function pointsBeside({ mouth, axis }: PocketShape, shape: TableShape): readonly CushionPoint[] {
  const points = shape.cushions.flatMap(({ core, roundingM }) => {
    const nose = core[1];
    if (nose === undefined) return [];
    const { fromX, fromY, alongX, alongY, lengthM } = nose;
    const end = { x: fromX + alongX * lengthM, y: fromY + alongY * lengthM };
    return [{ x: fromX, y: fromY }, end].map((at) => {
      const [dx, dy] = [at.x - mouth.x, at.y - mouth.y];
      const side = Math.sign(dx * axis.y - dy * axis.x);
      return { at, roundingM, side, apartM: Math.hypot(dx, dy) };
    });
  });
  return points
    .sort((a, b) => a.apartM - b.apartM)
    .slice(0, 2)
    .sort((a, b) => a.side - b.side);
}
