import { describe, expect, it } from 'vitest';
import { restingAt } from '../../../../src/engine/ball/ball-state';
import { afterCushion } from '../../../../src/engine/impacts/cushion';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { newNearest } from '../../../../src/engine/table/nearest-on-cushion';
import { offCushion } from '../../../../src/engine/table/off-cushion';

const RAIL_ABOVE = { ...newNearest(), nx: 0, ny: 1 };
const off = (vy: number, changes = {}) =>
  offCushion({ ...restingAt(0, 0), vx: 0.3, vy, ...changes }, RAIL_ABOVE, DEFAULT_KIT);

describe('a ball off a cushion', () => {
  it('is answered by the law of cushions where it comes faster than a push', () => {
    const ball = { ...restingAt(0, 0), vx: 0.3, vy: 0.01 };
    expect(off(0.01)).toEqual(afterCushion(ball, 0, 1, DEFAULT_KIT));
  });

  it('turns back as fast as it came, and keeps the rest, where it is only pushed', () => {
    expect(off(0.0005)).toEqual({ ...restingAt(0, 0), vx: 0.3, vy: -0.0005 });
  });

  it('is pushed along the line to the nose in the air, with no gain of energy', () => {
    const { vx, vy, vz } = off(0.0004, { zM: 0.01, vz: -0.0002 });
    expect(vx).toBe(0.3);
    expect(Math.hypot(vy, vz)).toBeCloseTo(Math.hypot(0.0004, 0.0002), 12);
    expect(vy).toBeLessThan(0.0004);
  });
});
