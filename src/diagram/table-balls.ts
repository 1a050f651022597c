import { FROZEN_M } from '../engine/position/neighbours';
import type { BallName, NamedBall } from '../engine/position/position';
import type { PocketName } from '../engine/table/pocket-shape';
import type { Point } from './canvas';
import type { Segment } from './overhead-view';
import type { TableMap } from './table-map';
import type { DrawnPocket } from './table-rails';

/** Balls smaller than this could not be told by number; they are then drawn larger than true, px. */
const MIN_BALL_PX = 8.5;

/** How balls are drawn where there is room. */
export interface BallSize {
  readonly radiusPx: number;
  readonly trueRadiusPx: number;
  /** How many times larger than true, 1 or more. */
  readonly enlarged: number;
}

export function ballSize(ballRadiusM: number, { pxPerM }: TableMap): BallSize {
  const trueRadiusPx = ballRadiusM * pxPerM;
  const radiusPx = Math.max(MIN_BALL_PX, trueRadiusPx);
  return { radiusPx, trueRadiusPx, enlarged: radiusPx / trueRadiusPx };
}

/** How large one ball is drawn: larger than true only as far as it covers no other one. */
export function radiusAmong(
  ball: NamedBall,
  balls: readonly NamedBall[],
  { radiusPx, trueRadiusPx }: BallSize,
  { pxPerM }: TableMap,
): number {
  const halvesPx = balls
    .filter(({ name }) => name !== ball.name)
    .map((other) => (apartM(ball, other) * pxPerM) / 2);
  return Math.max(trueRadiusPx, Math.min(radiusPx, ...halvesPx));
}

/** Half of the bar drawn between balls that touch, as a share of a radius, and at least, px. */
const BAR_SHARE = 0.9;
const LEAST_BAR_PX = 6;

/** A short bar where two balls touch, square across their line of centres. */
export function frozenBars(
  balls: readonly NamedBall[],
  { trueRadiusPx }: BallSize,
  { pxPerM, toPoint }: TableMap,
): readonly Segment[] {
  const frozenM = (2 * trueRadiusPx) / pxPerM + FROZEN_M;
  const halfPx = Math.max(LEAST_BAR_PX, BAR_SHARE * trueRadiusPx);
  return balls.flatMap((ball, index) =>
    balls
      .slice(index + 1)
      .filter((other) => apartM(ball, other) < frozenM)
      .map((other) => barBetween(toPoint(ball), toPoint(other), halfPx)),
  );
}

function barBetween(a: Point, b: Point, halfPx: number): Segment {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const share = halfPx / Math.hypot(dx, dy);
  const [x, y] = [(a.x + b.x) / 2, (a.y + b.y) / 2];
  return {
    from: { x: x - share * dy, y: y + share * dx },
    to: { x: x + share * dy, y: y - share * dx },
  };
}

function apartM(a: NamedBall, b: NamedBall): number {
  return Math.hypot(a.xM - b.xM, a.yM - b.yM);
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
