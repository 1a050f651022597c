import { describe, expect, it } from 'vitest';
import { ballOnRail, landingAt } from '../../../src/diagram/trial-rail';

/** A bed of 2.54 m, half as wide: 100 px across. */
const VIEW = { bed: { x: 20, y: 30, width: 100, height: 60 } };
const SIZE = { lengthM: 2.54, ballRadiusM: 0.028575 };

describe('the drawn far rail', () => {
  it('takes a touch for a landing: the middle for none, an end for half the width', () => {
    expect(landingAt(VIEW, SIZE.lengthM, 70)).toBeCloseTo(0, 12);
    expect(landingAt(VIEW, SIZE.lengthM, 120)).toBeCloseTo(0.635, 12);
    // A diamond is an eighth of the length, a quarter of the width.
    expect(landingAt(VIEW, SIZE.lengthM, 45)).toBeCloseTo(-0.3175, 12);
  });

  it('takes one beside the bed for its end, and all on a twentieth of a diamond', () => {
    expect(landingAt(VIEW, SIZE.lengthM, -40)).toBeCloseTo(-0.635, 12);
    const steps = landingAt(VIEW, SIZE.lengthM, 77.3) / (2.54 / 8 / 20);
    expect(steps).toBeCloseTo(Math.round(steps), 9);
  });

  it('draws the ball where the touch was, against the rail', () => {
    for (const x of [30, 70, 101]) {
      const ball = ballOnRail(VIEW, SIZE, landingAt(VIEW, SIZE.lengthM, x));
      expect(Math.abs(ball.cx - x)).toBeLessThan(1);
      expect(ball.cy - ball.r).toBeCloseTo(VIEW.bed.y, 9);
    }
  });
});
