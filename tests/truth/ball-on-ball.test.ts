import { describe, expect, it } from 'vitest';
import { type BallState, restingAt } from '../../src/engine/ball/ball-state';
import { afterContact, kickOf, newKick } from '../../src/engine/impacts/ball-on-ball';
import { DEFAULT_KIT, type Kit } from '../../src/engine/kit/kit';
import { travel } from '../../src/engine/motion/journey';
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
  it('turns off most at a cut of 28.126°', () => {
    // Source: the maximum of tan = sin φ cos φ / (sin²φ + 2/5). Exact.
    const kit = frictionlessBalls(1);
    const turn = (cut: number) => -rollsAt(hit(rolling(2), cut, kit).cueBall, kit);
    expect(turn(28.126)).toBeGreaterThan(turn(28.0));
    expect(turn(28.126)).toBeGreaterThan(turn(28.25));
  });
});

describe('throw', () => {
  const thrown = (ball: BallState, cut: number, kit: Kit) =>
    cut - directionDeg(hit(ball, cut, kit).objectBall);

  it.each([15, 30, 45, 60])('changes sides at a %d° cut where outside is 0.4 sin φ', (cut) => {
    // Source: the gearing condition R ω_z = v sin φ with ω_z = (5/2) side v / R. Exact. Cutting to
    // the right, outside is left: minus.
    const speed = 2;
    const geared = 0.4 * Math.sin(cut * RAD);
    const withSide = (side: number): BallState => ({
      ...stunned(speed),
      wz: (-2.5 * side * speed) / R,
    });
    expect(thrown(withSide(geared * 1.1), cut, DEFAULT_KIT)).toBeLessThan(0);
    expect(thrown(withSide(geared * 0.9), cut, DEFAULT_KIT)).toBeGreaterThan(0);
  });
});
