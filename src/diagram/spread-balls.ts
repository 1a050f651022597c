import { FROZEN_M } from '../engine/position/neighbours';
import type { BallName, NamedBall } from '../engine/position/position';
import type { Point } from './canvas';
import type { Segment } from './overhead-view';
import type { BallSize } from './table-balls';
import type { TableMap } from './table-map';

/** Where balls are drawn, and a bar across each place where two of them touch. */
export interface SpreadBalls {
  readonly places: ReadonlyMap<BallName, Point>;
  readonly bars: readonly Segment[];
}

interface Pair {
  readonly one: NamedBall;
  readonly other: NamedBall;
  readonly isFrozen: boolean;
}

/** Between two balls that do not touch at least this shows, px. */
const GAP_PX = 2.5;
/** More than balls in a rack need to come clear of one another. */
const MOST_ROUNDS = 40;
/** Half of a bar, as a share of a ball's radius. */
const BAR_SHARE = 0.9;

/**
 * Balls drawn larger than true would hide one another: those too close are pushed apart, as far as
 * they touch where they are frozen, and until a gap shows where they are not.
 */
export function spreadBalls(
  balls: readonly NamedBall[],
  size: BallSize,
  map: TableMap,
): SpreadBalls {
  const places = new Map<BallName, Point>(balls.map((ball) => [ball.name, map.toPoint(ball)]));
  const pairs = pairsOf(balls, (2 * size.trueRadiusPx) / map.pxPerM + FROZEN_M);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const moved = pairs.filter((pair) => pushApart(places, pair, 2 * size.radiusPx));
    if (moved.length === 0) break;
  }
  const bars = pairs.flatMap(({ one, other, isFrozen }) => {
    const [a, b] = [places.get(one.name), places.get(other.name)];
    return isFrozen && a && b ? [barBetween(a, b, BAR_SHARE * size.radiusPx)] : [];
  });
  return { places, bars };
}

function pairsOf(balls: readonly NamedBall[], frozenM: number): readonly Pair[] {
  return balls.flatMap((one, index) =>
    balls.slice(index + 1).map((other) => {
      const apartM = Math.hypot(one.xM - other.xM, one.yM - other.yM);
      return { one, other, isFrozen: apartM < frozenM };
    }),
  );
}

/** Half each; false where they are far enough apart to a hundredth of a pixel. */
function pushApart(
  places: Map<BallName, Point>,
  { one, other, isFrozen }: Pair,
  touchingPx: number,
): boolean {
  const [a, b] = [places.get(one.name), places.get(other.name)];
  if (!a || !b) return false;
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const apartPx = Math.hypot(dx, dy);
  const shortPx = touchingPx + (isFrozen ? 0 : GAP_PX) - apartPx;
  if (shortPx < 0.01) return false;
  const [nx, ny] = apartPx > 0 ? [dx / apartPx, dy / apartPx] : [0, 1];
  const byPx = shortPx / 2;
  places.set(one.name, { x: a.x - byPx * nx, y: a.y - byPx * ny });
  places.set(other.name, { x: b.x + byPx * nx, y: b.y + byPx * ny });
  return true;
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
