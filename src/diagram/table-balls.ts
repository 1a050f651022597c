import type { BallName, NamedBall } from '../engine/lie/position';
import type { PocketName } from '../engine/table/pocket-shape';
import type { Point } from './canvas';
import type { TableMap } from './table-map';
import type { DrawnPocket } from './table-rails';

/** Balls smaller than this could not be told by number; they are then drawn larger than true, px. */
const MIN_BALL_PX = 8.5;

/** How a ball is drawn. */
export interface BallSize {
  readonly radiusPx: number;
  /** How many times larger than true, 1 or more. */
  readonly enlarged: number;
}

export function ballSize(ballRadiusM: number, { pxPerM }: TableMap): BallSize {
  const truePx = ballRadiusM * pxPerM;
  const radiusPx = Math.max(MIN_BALL_PX, truePx);
  return { radiusPx, enlarged: radiusPx / truePx };
}

/** The first number of those with a band. */
const FIRST_BANDED = 9;

export function isBanded(name: BallName): boolean {
  return name !== 'cue' && name >= FIRST_BANDED;
}

/** The ball under a finger: the nearest within reach; null where there is none. */
export function ballNear(
  balls: readonly NamedBall[],
  finger: Point,
  map: TableMap,
  reachPx: number,
): BallName | null {
  return nearest(balls, map.toPoint, finger, reachPx)?.name ?? null;
}

/** Likewise the pocket. */
export function pocketNear(
  pockets: readonly DrawnPocket[],
  finger: Point,
  reachPx: number,
): PocketName | null {
  return (
    nearest(pockets, ({ hole }) => ({ x: hole.cx, y: hole.cy }), finger, reachPx)?.name ?? null
  );
}

function nearest<T>(
  things: readonly T[],
  placeOf: (thing: T) => Point,
  finger: Point,
  reachPx: number,
): T | null {
  let [found, leastPx]: [T | null, number] = [null, reachPx];
  for (const thing of things) {
    const { x, y } = placeOf(thing);
    const awayPx = Math.hypot(x - finger.x, y - finger.y);
    if (awayPx <= leastPx) [found, leastPx] = [thing, awayPx];
  }
  return found;
}
