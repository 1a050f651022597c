import { describe, expect, it } from 'vitest';
import { type BallState, restingAt } from '../../../../src/engine/ball/ball-state';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { travel } from '../../../../src/engine/motion/journey';
import { type AcrossLine, lineCrossing } from '../../../../src/engine/motion/line-crossing';
import { runOf } from '../../../../src/engine/motion/run';
import { between, seededRandom } from '../../../harness/seeded-random';
import { anyBall, anyKit } from '../ball/random-balls';

/** The default cloth's roll, m/s². */
const SLOWING = 0.01 * 9.80665;

/** A ball that rolls from a place along a way (rad from y, right +) at 1 m/s. */
function rollingFrom(xM: number, yM: number, wayRad: number): BallState {
  const [vx, vy] = [Math.sin(wayRad), Math.cos(wayRad)];
  const { ballRadiusM } = DEFAULT_KIT;
  return { ...restingAt(xM, yM), vx, vy, wx: -vy / ballRadiusM, wy: vx / ballRadiusM };
}

const crossing = (ball: BallState, line: Partial<AcrossLine>) =>
  lineCrossing(runOf(ball, 0, DEFAULT_KIT), {
    fromXM: 0,
    fromYM: 0,
    alongRad: 0,
    distanceM: 2,
    ...line,
  });

describe('the crossing of a line', () => {
  it('comes when the ball has rolled so far: D = vt − at²/2', () => {
    const timeS = (1 - Math.sqrt(1 - 2 * SLOWING * 2)) / SLOWING;
    const crossed = crossing(rollingFrom(0, 0, 0), {});
    expect(crossed?.timeS).toBeCloseTo(timeS, 8);
    expect(crossed?.rightM).toBeCloseTo(0, 12);
  });

  it('is not, where the ball rests before it: it rolls v²/2a', () => {
    const reachM = 1 / (2 * SLOWING);
    expect(crossing(rollingFrom(0, 0, 0), { distanceM: reachM - 1e-6 })).not.toBeNull();
    expect(crossing(rollingFrom(0, 0, 0), { distanceM: reachM + 1e-6 })).toBeNull();
    expect(crossing(rollingFrom(0, 0, Math.PI), {})).toBeNull();
  });

  it('is as far right as a straight way leads: D tan ψ', () => {
    for (const way of [-0.5, -0.01, 0.2, 0.7]) {
      expect(crossing(rollingFrom(0, 0, way), {})?.rightM).toBeCloseTo(2 * Math.tan(way), 8);
    }
  });

  it('is measured from where it says, along the way it says, right of it', () => {
    // To the east, right is south.
    const line = { fromXM: 1, fromYM: 1, alongRad: Math.PI / 2, distanceM: 0.5 };
    expect(crossing(rollingFrom(0, 0.7, Math.PI / 2), line)?.rightM).toBeCloseTo(0.3, 9);
    expect(crossing(rollingFrom(0, 1.2, Math.PI / 2), line)?.rightM).toBeCloseTo(-0.2, 9);
  });

  it('does not hang on how the whole is turned', () => {
    const random = seededRandom(31);
    for (let count = 0; count < 50; count++) {
      const [turn, way] = [between(random, -4, 4), between(random, -0.8, 0.8)];
      const turned = crossing(rollingFrom(0, 0, way + turn), { alongRad: turn });
      const straight = crossing(rollingFrom(0, 0, way), {});
      expect(turned?.rightM).toBeCloseTo(straight?.rightM ?? Number.NaN, 8);
      expect(turned?.timeS).toBeCloseTo(straight?.timeS ?? Number.NaN, 8);
    }
  });

  it('lies on the line, within the run, whatever the ball does, and before it nothing does', () => {
    const random = seededRandom(32);
    let crossed = 0;
    for (let count = 0; count < 300; count++) {
      const kit = anyKit(random, 0.005);
      const ball = anyBall(random);
      const { endS } = travel(ball, 0, kit, []);
      const across = (line: AcrossLine) => lineCrossing(runOf(ball, 0, kit), line);
      const line = { fromXM: 0, fromYM: 0, alongRad: 0, distanceM: between(random, 0.2, 2) };
      const found = across(line);
      if (found === null) continue;
      crossed++;
      expect(found.timeS).toBeGreaterThan(0);
      expect(found.timeS).toBeLessThanOrEqual(endS);
      expect(Number.isFinite(found.rightM)).toBe(true);
      const nearer = across({ ...line, distanceM: line.distanceM - 0.05 });
      expect(nearer?.timeS).toBeLessThan(found.timeS);
    }
    expect(crossed).toBeGreaterThan(50);
  });
});
