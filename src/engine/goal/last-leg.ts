import type { BallState } from '../ball/ball-state';
import type { Kit } from '../kit/kit';
import { lineCrossing } from '../motion/line-crossing';
import type { Run } from '../motion/run';
import { bearing, wrapped } from '../numerics/angle';
import type { PocketShape } from '../table/pocket-shape';
import type { TableShape } from '../table/table-shape';
import { type OpenWay, openWay } from './open-way';
import type { Arrival } from './task';

/** Where a ball that sets off heads, seen from the middle of what of a pocket is open to it. */
export interface Heading {
  readonly open: OpenWay;
  /** Right + of that middle, rad. */
  readonly offRad: number;
}

/** Null where nothing of the pocket is open from there. */
export function headingAt(
  ball: BallState,
  pocket: PocketShape,
  shape: TableShape,
  kit: Kit,
): Heading | null {
  const open = openWay({ x: ball.xM, y: ball.yM }, pocket, shape, kit);
  return open && { open, offRad: wrapped(bearing(ball.vx, ball.vy) - open.alongRad) };
}

/**
 * How a ball that sets off comes to the mouth of a pocket, were there nothing else on the table: its
 * curve and what its spin does counted. Null where it stops before, or heads elsewhere.
 */
export function mouthArrival(
  ball: BallState,
  { open }: Heading,
  kit: Kit,
  run: Run,
): Arrival | null {
  const { alongRad, distanceM, halfAngleRad } = open;
  run.begin(ball, 0, kit);
  const crossing = lineCrossing(run, { fromXM: ball.xM, fromYM: ball.yM, alongRad, distanceM });
  if (crossing === null) return null;
  const { rightM, speedMps } = crossing;
  return { miss: rightM / (distanceM * Math.tan(halfAngleRad)), speedMps };
}
