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
  return openBetween(from, pocket, pointsBeside(pocket, shape), touchingM(kit));
}

/**
 * The same between the points of a pocket, for whoever asks about it often.
 *
 * @param reachM how far off a point the centre of a ball that touches it is, m
 */
export function openBetween(
  from: Point,
  pocket: PocketShape,
  [left, right]: PointsBeside,
  reachM: number,
): OpenWay | null {
  const axisRad = bearing(pocket.axis.x, pocket.axis.y);
  const edge = ({ at, roundingM, side }: CushionPoint) => {
    const [dx, dy] = [at.x - from.x, at.y - from.y];
    const clear = Math.asin(Math.min(1, (reachM + roundingM) / Math.hypot(dx, dy)));
    return wrapped(bearing(dx, dy) - axisRad) - side * clear;
  };
  const [low, high] = [edge(left), edge(right)];
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

/** The two points beside a pocket, the left one first. */
export type PointsBeside = readonly [left: CushionPoint, right: CushionPoint];

export function pointsBeside({ mouth, axis }: PocketShape, shape: TableShape): PointsBeside {
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
  const [one, other] = points.sort((a, b) => a.apartM - b.apartM);
  if (one === undefined || other === undefined) throw new RangeError('a pocket has two points');
  return one.side < other.side ? [one, other] : [other, one];
}
