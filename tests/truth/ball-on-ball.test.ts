import { describe, expect, it } from 'vitest';
import { travel } from '../../src/engine/events/journey';
import { afterContact, kickOf, newKick } from '../../src/engine/model/ball-on-ball';
import { type BallState, restingAt } from '../../src/engine/model/ball-state';
import { DEFAULT_KIT, type Kit } from '../../src/engine/model/kit';
import { frictionlessBalls } from '../harness/idealised-kits';

const RAD = Math.PI / 180;
const R = DEFAULT_KIT.ballRadiusM;

/** Both balls just after a cue ball going along y touches an object ball at a cut to the right. */
function hit(ball: BallState, cutDeg: number, kit: Kit) {
  const kick = newKick();
  const [nx, ny] = [Math.sin(cutDeg * RAD), Math.cos(cutDeg * RAD)];
  kickOf(ball, nx, ny, 0, kit, kick);
  return afterContact(ball, nx, ny, 0, kick, kit);
}

const stunned = (speed: number): BallState => ({ ...restingAt(0, 0), vy: speed });
const rolling = (speed: number): BallState => ({ ...stunned(speed), wx: -speed / R });
const directionDeg = (ball: BallState) => Math.atan2(ball.vx, ball.vy) / RAD;

/** Direction in which a ball ends up rolling, degrees right of y. */
function rollsAt(ball: BallState, kit: Kit): number {
  const { phases } = travel(ball, 0, kit, []);
  const roll = phases.find((phase) => phase.motion === 'rolling');
  return roll === undefined ? Number.NaN : directionDeg(roll.start);
}

describe('where a rolling cue ball goes after frictionless balls meet', () => {
  // Source: tan = ((1+e)/2) sin φ cos φ / (sin²φ + ((1−e)/2) cos²φ + 2/5), worked out. Exact.
  it.each([
    [
      1,
      [10, 20, 28.126, 30, 40, 48.59, 60, 80],
      [21.68, 31.87, 33.749, 33.67, 31.2, 27.27, 20.63, 7.12],
    ],
    [0.95, [10, 20, 30, 40, 48.59, 60, 80], [20.15, 30.17, 32.26, 30.11, 26.42, 20.06, 6.94]],
  ])('restitution %d', (e, cuts, degrees) => {
    const kit = frictionlessBalls(e);
    cuts.forEach((cut, index) => {
      const direction = -rollsAt(hit(rolling(2), cut, kit).cueBall, kit);
      expect(Math.abs(direction - (degrees[index] ?? Number.NaN))).toBeLessThan(0.0051);
    });
  });

  it('turns off most, 33.749°, at a cut of 28.126°', () => {
    // Source: the maximum of the same formula at e = 1. Exact.
    const kit = frictionlessBalls(1);
    const turn = (cut: number) => -rollsAt(hit(rolling(2), cut, kit).cueBall, kit);
    expect(turn(28.126)).toBeGreaterThan(turn(28.0));
    expect(turn(28.126)).toBeGreaterThan(turn(28.25));
    expect(turn(28.126)).toBeCloseTo(33.749, 3);
  });

  it('turns off about 33° at a half-ball hit of real balls', () => {
    // Source: measured, Broadfoot, Billiards (1896): 33°.
    expect(
      Math.abs(rollsAt(hit(rolling(2), 30, DEFAULT_KIT).cueBall, DEFAULT_KIT)),
    ).toBeGreaterThan(31);
    expect(Math.abs(rollsAt(hit(rolling(2), 30, DEFAULT_KIT).cueBall, DEFAULT_KIT))).toBeLessThan(
      35,
    );
  });

  it('leaves at right angles when stunned, e = 1', () => {
    // Source: equal masses, energy and momentum. Exact.
    const { cueBall, objectBall } = hit(stunned(2), 37, frictionlessBalls(1));
    expect(directionDeg(objectBall) - directionDeg(cueBall)).toBeCloseTo(90, 9);
  });

  it('follows a head-on hit at 2/7 of its speed, the object ball at 5/7, e = 1', () => {
    // Source: momentum and the rolling condition. Exact.
    const kit = { ...frictionlessBalls(1) };
    const { cueBall, objectBall } = hit(rolling(2), 0, kit);
    const rollSpeed = (ball: BallState) =>
      travel(ball, 0, kit, []).phases.find((phase) => phase.motion === 'rolling')?.start.vy;
    expect(rollSpeed(cueBall)).toBeCloseTo((2 / 7) * 2, 12);
    expect(rollSpeed(objectBall)).toBeCloseTo((5 / 7) * 2, 12);
  });

  // Source: an exam paper's formula, asin((1+e)/(3−e)). Exact.
  it.each([
    [0.95, 72.03],
    [0.92, 67.38],
    [0.98, 78.58],
  ])('never turns a stunned cue ball by more than the frictionless maximum, e = %d', (e, most) => {
    const kit = frictionlessBalls(e);
    let widest = 0;
    for (let cut = 0.01; cut < 90; cut += 0.01) {
      widest = Math.max(widest, Math.abs(directionDeg(hit(stunned(1), cut, kit).cueBall)));
    }
    expect(widest).toBeCloseTo(most, 2);
  });
});

describe('throw', () => {
  const thrown = (ball: BallState, cut: number, kit: Kit) =>
    cut - directionDeg(hit(ball, cut, kit).objectBall);

  // Source: tan = min(μ, (2/7) u_t / ((1+e) u_n)) with the default μ(u), a fit to Marlow 1995 (from
  // memory), worked at e = 0.95 for a cue ball without spin.
  it.each([
    [0.5, [1.48, 2.25, 3.05, 4.84, 4.77, 4.42]],
    [1, [1.48, 2.25, 3.05, 4.15, 3.43, 2.98]],
    [3, [1.48, 2.25, 2.59, 1.78, 1.19, 0.94]],
  ])('of a stunned cue ball at %d m/s', (speed, degrees) => {
    [10, 15, 20, 30, 45, 60].forEach((cut, index) => {
      const angle = thrown(stunned(speed), cut, DEFAULT_KIT);
      expect(Math.abs(angle - (degrees[index] ?? Number.NaN))).toBeLessThan(0.0051);
    });
  });

  // Source: atan μ. Exact.
  it.each([
    [0.03, 1.72],
    [0.06, 3.43],
    [0.1, 5.71],
  ])('is capped at atan μ for a constant friction of %d', (a, degrees) => {
    const kit = { ...DEFAULT_KIT, ballFriction: { a, b: 0, c: 0 } };
    expect(thrown(stunned(1), 60, kit)).toBeCloseTo(degrees, 2);
  });

  it.each([15, 30, 45, 60])(
    'vanishes at a %d° cut with outside of 0.4 sin φ, and turns beyond',
    (cut) => {
      // Source: the gearing condition R ω_z = v sin φ with ω_z = (5/2) side v / R. Exact. Cutting to
      // the right, outside is left: minus.
      const speed = 2;
      const geared = 0.4 * Math.sin(cut * RAD);
      const withSide = (side: number): BallState => ({
        ...stunned(speed),
        wz: (-2.5 * side * speed) / R,
      });
      expect(thrown(withSide(geared), cut, DEFAULT_KIT)).toBeCloseTo(0, 9);
      expect(thrown(withSide(geared * 1.1), cut, DEFAULT_KIT)).toBeLessThan(0);
      expect(thrown(withSide(geared * 0.9), cut, DEFAULT_KIT)).toBeGreaterThan(0);
    },
  );
});
