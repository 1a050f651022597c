import { describe, expect, it } from 'vitest';
import { strokeOf } from '../../../../src/engine/direct/shot';
import { solveAim } from '../../../../src/engine/direct/solve-aim';
import { directPot, targetOfStroke } from '../../../../src/engine/goal/direct-pot';
import { openingAt } from '../../../../src/engine/goal/opening';
import type { Target } from '../../../../src/engine/goal/target';
import { missAt } from '../../../../src/engine/goal/task';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';

const SOFT = { speedMps: 0.5, midM: -0.01, halfM: 0.04 };
const FIRM = { speedMps: 2.5, midM: 0.002, halfM: 0.02 };

describe('what of a mouth is open', () => {
  it('is between two speeds in proportion, and beyond them as it is at the nearest', () => {
    const half = openingAt([SOFT, FIRM], 1.5);
    expect(half.midM).toBeCloseTo(-0.004, 12);
    expect(half.halfM).toBeCloseTo(0.03, 12);
    expect(openingAt([SOFT, FIRM], 0.1)).toMatchObject({ midM: -0.01, halfM: 0.04 });
    expect(openingAt([SOFT, FIRM], 4)).toMatchObject({ midM: 0.002, halfM: 0.02 });
    expect(openingAt([FIRM], 0.1).halfM).toBe(0.02);
  });

  it('cannot be told of nothing', () => {
    expect(() => openingAt([], 1)).toThrow(RangeError);
  });
});

describe('a target that narrows with speed', () => {
  const wide: Target = { kind: 'mouth', distanceM: 0.7, mouthM: 0.12 };
  const narrowing: Target = { ...wide, openings: [SOFT, FIRM] };
  const solvedAt = (speedMps: number) => {
    const shot = { distanceM: 1, cutRad: 0.5, side: 0, height: 0, elevationRad: 0, speedMps };
    const answer = solveAim(shot, DEFAULT_KIT);
    if (!answer.ok) throw new Error(answer.reason);
    return { shot, aimRad: answer.aimRad };
  };
  const missOf = (speedMps: number, target: Target, byRad = 0) => {
    const { shot, aimRad } = solvedAt(speedMps);
    const task = directPot(shot, target, DEFAULT_KIT.ballRadiusM);
    const miss = missAt(task, DEFAULT_KIT, strokeOf(shot, aimRad + byRad));
    if (typeof miss !== 'number') throw new Error(miss);
    return miss;
  };

  it('counts a miss from the middle of what is open at the ball’s own speed', () => {
    // So hard that it comes faster than the fastest told: 0.002 m right of the line, 0.02 m wide.
    const rightM = missOf(5, wide) * (0.12 / 2 - DEFAULT_KIT.ballRadiusM);
    expect(Math.abs(rightM)).toBeLessThan(1e-4);
    expect(missOf(5, narrowing)).toBeCloseTo((rightM - 0.002) / 0.02, 9);
  });

  it('lets less of the same error go the harder the ball comes', () => {
    const slopeAt = (speedMps: number) =>
      Math.abs(missOf(speedMps, narrowing, 1e-4) - missOf(speedMps, narrowing)) /
      Math.abs(missOf(speedMps, wide, 1e-4) - missOf(speedMps, wide));
    expect(slopeAt(5)).toBeGreaterThan(1.3 * slopeAt(1.4));
  });

  it('is for one stroke a mouth as wide as that stroke finds it', () => {
    const { shot, aimRad } = solvedAt(5);
    const found = (target: Target) =>
      targetOfStroke(shot, target, DEFAULT_KIT, strokeOf(shot, aimRad));
    const { ballRadiusM } = DEFAULT_KIT;
    expect(found(narrowing)).toEqual({ ...wide, mouthM: 2 * (0.02 + ballRadiusM) });
    expect(found(wide)).toBe(wide);
  });
});
