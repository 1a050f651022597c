import type { BallName, NamedBall } from '../engine/lie/position';
import type { Point } from './canvas';
import type { Segment } from './overhead-view';
import type { BallSize } from './table-balls';
import type { TableMap } from './table-map';

/** Where balls are drawn, and a bar across each place where two of them touch. */
export interface SpreadBalls {
  readonly places: ReadonlyMap<BallName, Point>;
  readonly bars: readonly Segment[];
}

interface Drawn {
  readonly name: BallName;
  x: number;
  y: number;
  /** Where the others push it in this round. */
  pushX: number;
  pushY: number;
}

interface Pair {
  readonly one: Drawn;
  readonly other: Drawn;
  readonly isFrozen: boolean;
}

/** Between two balls that do not touch at least this shows, px. */
const GAP_PX = 2.5;
/** Nearer than this to where it should be a ball stays, px. */
const CLOSE_PX = 0.05;
/** More than a full rack takes, at twice the true size. */
const MOST_ROUNDS = 40;
/** How much of what is wanted a round does: all at once, balls amid others would swing. */
const SHARE = 0.7;
/** Half of a bar, as a share of a ball's radius. */
const BAR_SHARE = 0.9;

/** Which balls touch, in pairs. */
type FrozenPairs = readonly (readonly [BallName, BallName])[];

/**
 * Balls drawn larger than true would hide one another: those too close are pushed apart, as far as
 * they touch where they are frozen, and until a gap shows where they are not.
 */
export function spreadBalls(
  balls: readonly NamedBall[],
  frozen: FrozenPairs,
  size: BallSize,
  map: TableMap,
): SpreadBalls {
  const drawn = balls.map((ball): Drawn => {
    return { name: ball.name, ...map.toPoint(ball), pushX: 0, pushY: 0 };
  });
  const pairs = pairsOf(drawn, frozen);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    if (!pushAll(pairs, 2 * size.radiusPx)) break;
    for (const ball of drawn) follow(ball);
  }
  return {
    places: new Map(drawn.map(({ name, x, y }) => [name, { x, y }])),
    bars: pairs
      .filter(({ isFrozen }) => isFrozen)
      .map(({ one, other }) => barBetween(one, other, BAR_SHARE * size.radiusPx)),
  };
}

function pairsOf(drawn: readonly Drawn[], frozen: FrozenPairs): readonly Pair[] {
  return drawn.flatMap((one, index) =>
    drawn.slice(index + 1).map((other) => {
      const isFrozen = frozen.some((pair) => pair.includes(one.name) && pair.includes(other.name));
      return { one, other, isFrozen };
    }),
  );
}

/** Both by as much; false where all are as far apart as they should be. */
function pushAll(pairs: readonly Pair[], touchingPx: number): boolean {
  let isMoving = false;
  for (const { one, other, isFrozen } of pairs) {
    const [dx, dy] = [other.x - one.x, other.y - one.y];
    const apartPx = Math.hypot(dx, dy);
    const shortPx = touchingPx + (isFrozen ? 0 : GAP_PX) - apartPx;
    if (shortPx < CLOSE_PX) continue;
    isMoving = true;
    const [nx, ny] = apartPx > 0 ? [dx / apartPx, dy / apartPx] : [0, 1];
    const byPx = (SHARE * shortPx) / 2;
    one.pushX -= byPx * nx;
    one.pushY -= byPx * ny;
    other.pushX += byPx * nx;
    other.pushY += byPx * ny;
  }
  return isMoving;
}

function follow(ball: Drawn): void {
  ball.x += ball.pushX;
  ball.y += ball.pushY;
  ball.pushX = 0;
  ball.pushY = 0;
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
