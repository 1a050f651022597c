import type { Kit } from '../kit/kit';
import type { Point } from '../table/point';
import type { TableShape } from '../table/table-shape';
import type { Bridge, LeastElevation, Position } from './position';

/** A hand takes a round patch of this radius, m (our estimate). */
const HAND_M = 0.05;
/** From the cue ball's centre back to the middle of a hand, m (common practice, no source). */
const NEAREST_M = 0.12;
const FARTHEST_M = 0.32;
const STEP_M = 0.02;
/** From a nose to the outer edge of the rail, m: mid-way of what the WPA allows (from memory). */
const RAIL_M = 0.14;
/** A cue raised more than this to clear a ball leaves no bridge to play from, rad (our estimate). */
const STEEPEST_RAD = (40 * Math.PI) / 180;

/** Whether and where a hand can be set down behind the cue ball. */
export function bridgeRoom(
  cueBall: Point,
  headingRad: number,
  others: Position,
  least: LeastElevation,
  shape: TableShape,
  kit: Kit,
): Bridge {
  if (typeof least.over === 'number') {
    return least.elevationRad > STEEPEST_RAD ? 'nowhere' : 'over-a-ball';
  }
  const free = handPlaces(cueBall, headingRad).filter((hand) =>
    others.every(({ xM, yM }) => Math.hypot(xM - hand.x, yM - hand.y) >= HAND_M + kit.ballRadiusM),
  );
  if (free.some((hand) => isWithinNoses(hand, shape, -HAND_M))) return 'on-the-bed';
  return free.some((hand) => isWithinNoses(hand, shape, RAIL_M)) ? 'on-the-rail' : 'nowhere';
}

function handPlaces({ x, y }: Point, headingRad: number): readonly Point[] {
  const count = Math.round((FARTHEST_M - NEAREST_M) / STEP_M) + 1;
  return Array.from({ length: count }, (_, step) => {
    const backM = NEAREST_M + step * STEP_M;
    return { x: x - backM * Math.sin(headingRad), y: y - backM * Math.cos(headingRad) };
  });
}

function isWithinNoses({ x, y }: Point, { widthM, lengthM }: TableShape, byM: number): boolean {
  return Math.abs(x) <= widthM / 2 + byM && Math.abs(y) <= lengthM / 2 + byM;
}
