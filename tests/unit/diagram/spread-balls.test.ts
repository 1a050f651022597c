import { describe, expect, it } from 'vitest';
import { spreadBalls } from '../../../src/diagram/spread-balls';
import { ballSize } from '../../../src/diagram/table-balls';
import { layOutTable } from '../../../src/diagram/table-map';
import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import { frozenPairs } from '../../../src/engine/lie/neighbours';
import type { BallName, NamedBall } from '../../../src/engine/lie/position';

const RADIUS_M = 0.028575;
const WIDTH_M = 2 * RADIUS_M;
const NINE_FOOT = { lengthM: 2.54, widthM: 1.27 };
const MAP = layOutTable(NINE_FOOT, { widthPx: 190, heightPx: 350, textPx: 13 });
const SIZE = ballSize(RADIUS_M, MAP);
const spread = (balls: readonly NamedBall[]) =>
  spreadBalls(balls, frozenPairs(balls, DEFAULT_KIT), SIZE, MAP);

function apartPx(places: ReturnType<typeof spread>['places'], one: BallName, other: BallName) {
  const [a, b] = [places.get(one), places.get(other)];
  return Math.hypot((a?.x ?? 0) - (b?.x ?? 0), (a?.y ?? 0) - (b?.y ?? 0));
}

const pair = (gapM: number): readonly NamedBall[] => [
  { name: 4, xM: 0.1, yM: 0.2 },
  { name: 5, xM: 0.1 + WIDTH_M + gapM, yM: 0.2 },
];

describe('balls drawn larger than true', () => {
  it('touch where they are frozen, with a bar across their line of centres', () => {
    expect(SIZE.enlarged).toBeGreaterThan(1.5);
    const { places, bars } = spread(pair(0));
    expect(apartPx(places, 4, 5)).toBeCloseTo(2 * SIZE.radiusPx, 0);
    expect(bars).toHaveLength(1);
    const { x, y } = MAP.toPoint({ xM: 0.1 + RADIUS_M, yM: 0.2 });
    for (const end of [bars[0]?.from, bars[0]?.to]) {
      expect(end?.x).toBeCloseTo(x, 6);
      expect(Math.abs((end?.y ?? 0) - y)).toBeGreaterThan(4);
    }
  });

  it('show a gap and no bar where they all but touch', () => {
    const { places, bars } = spread(pair(0.0001));
    expect(apartPx(places, 4, 5)).toBeGreaterThan(2 * SIZE.radiusPx + 2);
    expect(bars).toEqual([]);
  });

  it('lie where they are where there is room', () => {
    const { places } = spread(pair(0.2));
    for (const ball of pair(0.2)) expect(places.get(ball.name)).toEqual(MAP.toPoint(ball));
  });

  it('come clear of one another in a full rack, about its middle', () => {
    const rows = [1, 2, 3, 4, 5];
    const rack = rows
      .flatMap((row) =>
        rows.slice(0, row).map((at) => ({
          xM: (at - (row + 1) / 2) * WIDTH_M,
          yM: 0.6 + (row * WIDTH_M * Math.sqrt(3)) / 2,
        })),
      )
      .map((place, index) => ({ name: index + 1, ...place }));
    const { places, bars } = spread(rack);
    const names = rack.map(({ name }) => name);
    const least = names.flatMap((one) =>
      names.filter((other) => other > one).map((other) => apartPx(places, one, other)),
    );
    expect(Math.min(...least)).toBeGreaterThan(2 * SIZE.radiusPx - 0.5);
    // Each touches its neighbours in its row and in the next: 3 × (1 + 2 + 3 + 4) pairs.
    expect(bars).toHaveLength(30);
    expect((places.get(11)?.x ?? 0) + (places.get(15)?.x ?? 0)).toBeCloseTo(190, 1);
  });

  it('are drawn side by side even where two lie in one place', () => {
    const { places } = spread(pair(-WIDTH_M));
    expect(apartPx(places, 4, 5)).toBeCloseTo(2 * SIZE.radiusPx, 0);
  });
});
