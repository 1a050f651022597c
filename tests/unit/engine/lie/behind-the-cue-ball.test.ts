import { describe, expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { bridgeRoom } from '../../../../src/engine/lie/bridge-room';
import { leastElevation } from '../../../../src/engine/lie/least-elevation';
import type { NamedBall } from '../../../../src/engine/lie/position';
import { WPA_POCKETS } from '../../../../src/engine/table/pocket-standard';
import { tableShape } from '../../../../src/engine/table/table-shape';

const DEG = 180 / Math.PI;
const SHAPE = tableShape(2.54, 1.27, WPA_POCKETS);
const UP_THE_TABLE = 0;

const least = (yM: number, others: readonly NamedBall[] = [], height = 0) =>
  leastElevation({ x: 0, y: yM }, UP_THE_TABLE, others, SHAPE, DEFAULT_KIT, {
    side: 0,
    height,
  });
const room = (yM: number, others: readonly NamedBall[] = []) =>
  bridgeRoom({ x: 0, y: yM }, UP_THE_TABLE, others, least(yM, others), SHAPE, DEFAULT_KIT);
const ballAt = (xM: number, yM: number): NamedBall => ({ name: 5, xM, yM });

describe('the least elevation of the cue', () => {
  it('is that of an open table where nothing is behind the ball', () => {
    expect(least(0)).toEqual({ elevationRad: expect.closeTo(3 / DEG, 12), over: 'nothing' });
  });

  // Common practice, no source: five to ten degrees over a rail.
  it('is five to ten degrees with the ball a hand’s breadth off the rail', () => {
    const { elevationRad, over } = least(-1.27 + 0.1);
    expect(over).toBe('cushion');
    expect(elevationRad * DEG).toBeGreaterThan(5);
    expect(elevationRad * DEG).toBeLessThan(10);
  });

  it('grows the nearer the ball is to the rail, and the lower it is struck', () => {
    const near = [0.3, 0.2, 0.1, 0.05].map((offM) => least(-1.27 + offM).elevationRad);
    expect([...near].sort((a, b) => a - b)).toEqual(near);
    const low = [0.4, 0.2, 0, -0.2, -0.4].map((height) => least(-1.2, [], height).elevationRad);
    expect([...low].sort((a, b) => a - b)).toEqual(low);
    expect(low[4]).toBeGreaterThan((low[0] ?? 0) + 5 / DEG);
  });

  it('lays the stick’s underside on a touching ball, by hand', () => {
    // 57.15 mm behind, the axis must pass a ball's radius, half a shaft (6.5 + 0.31 mm) and 2 mm of
    // air above the middle of that ball: sin θ = 37.39 / 57.15.
    const { elevationRad, over } = least(0, [ballAt(0, -0.05715)]);
    expect(over).toBe(5);
    expect(elevationRad * DEG).toBeCloseTo(Math.asin(37.39 / 57.15) * DEG, 1);
  });

  it('does not mind a ball beside the stick, before the ball, or beyond the butt', () => {
    for (const ball of [ballAt(0.04, -0.2), ballAt(0, 0.3), ballAt(0, -1.5)]) {
      expect(least(0.3, [ball]).over).toBe('nothing');
    }
  });
});

describe('the room for a hand', () => {
  it('is on the bed in the open, on the rail near one, and over a ball behind', () => {
    expect(room(0)).toBe('on-the-bed');
    expect(room(-1.2)).toBe('on-the-rail');
    expect(room(0, [ballAt(0, -0.1)])).toBe('over-a-ball');
  });

  it('is nowhere when a ball touches the cue ball from behind', () => {
    expect(room(0, [ballAt(0, -0.0572)])).toBe('nowhere');
  });

  it('is nowhere when balls on both sides leave no place for it', () => {
    const fence = [-0.06, 0.06].flatMap((xM) =>
      [0.12, 0.2, 0.28, 0.36].map((backM, at) => ({ name: at + (xM > 0 ? 8 : 1), xM, yM: -backM })),
    );
    expect(room(0, fence)).toBe('nowhere');
  });
});
