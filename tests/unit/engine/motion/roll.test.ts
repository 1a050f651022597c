import { describe, expect, it } from 'vitest';
import { restingAt } from '../../../../src/engine/ball/ball-state';
import { DEFAULT_KIT, type Kit } from '../../../../src/engine/kit/kit';
import { comesToRest, roll } from '../../../../src/engine/motion/roll';
import { between, seededRandom } from '../../../harness/seeded-random';

/** A bed that pulls by this share of what the cloth of the default kit holds, that way. */
function tilted(share: number, wayRad: number): Kit {
  const slope = (7 / 5) * DEFAULT_KIT.rollFriction * share;
  return {
    ...DEFAULT_KIT,
    bedSlope: { alongM_per_M: slope * Math.cos(wayRad), rightM_per_M: slope * Math.sin(wayRad) },
  };
}

describe('comesToRest', () => {
  it('is where 5/7 of the slope is below the roll friction, whichever way it falls', () => {
    const random = seededRandom(7);
    for (let count = 0; count < 500; count++) {
      const way = between(random, 0, 2 * Math.PI);
      expect(comesToRest(tilted(0.9998, way))).toBe(true);
      expect(comesToRest(tilted(1, way))).toBe(false);
      expect(comesToRest(tilted(1.0001, way))).toBe(false);
    }
    expect(comesToRest(DEFAULT_KIT)).toBe(true);
  });

  it('promises that a ball rolling any way does roll to rest', () => {
    const random = seededRandom(8);
    for (let count = 0; count < 500; count++) {
      const kit = tilted(0.9998, between(random, 0, 7));
      expect(comesToRest(kit)).toBe(true);
      const way = between(random, 0, 7);
      const ball = { ...restingAt(0, 0), vx: Math.sin(way), vy: Math.cos(way) };
      const { durationS } = roll(ball, 0, kit);
      expect(durationS).toBeGreaterThan(0);
      expect(durationS).toBeLessThan(1e6);
    }
  });
});

describe('roll', () => {
  it('takes as long as its speed over its slowing', () => {
    const { durationS } = roll({ ...restingAt(0, 0), vx: 0.3, vy: 0.4 }, 0, DEFAULT_KIT);
    expect(durationS).toBeCloseTo(0.5 / (0.01 * 9.80665), 12);
  });

  it('refuses a bed on which nothing stops', () => {
    const kit = tilted(1.1, 0);
    expect(() => roll({ ...restingAt(0, 0), vy: 1 }, 0, kit)).toThrow(RangeError);
  });
});
