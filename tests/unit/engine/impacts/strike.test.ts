import { describe, expect, it } from 'vitest';
import { squirtAngle, strike } from '../../../../src/engine/impacts/strike';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { between, seededRandom } from '../../../harness/seeded-random';
import { cross, dot, length, minus, plus, times, type Vec3 } from '../../../truth/reference/vec3';

/** The cue's own axes on the table: along it, to its right, and up its face. */
function cueAxes(aimRad: number, elevationRad: number) {
  const [s, c] = [Math.sin(aimRad), Math.cos(aimRad)];
  const [up, level] = [Math.sin(elevationRad), Math.cos(elevationRad)];
  const ahead: Vec3 = [s * level, c * level, -up];
  const right: Vec3 = [c, -s, 0];
  return { ahead, right, face: cross(right, ahead) };
}

describe('strike', () => {
  it('moves the tip’s contact point aside by just as much as the end of the cue', () => {
    const random = seededRandom(2001);
    for (let count = 0; count < 500; count++) {
      const offset = between(random, 0.01, 0.9);
      const clock = between(random, 0, 2 * Math.PI);
      const [side, height] = [offset * Math.cos(clock), offset * Math.sin(clock)];
      const aimRad = between(random, -1, 1);
      const elevationRad = between(random, 0, 0.5);
      const kit = { ...DEFAULT_KIT, massRatio: between(random, 2, 60) };
      const ball = strike({ aimRad, side, height, elevationRad, speedMps: 2 }, kit);
      const { ahead, right, face } = cueAxes(aimRad, elevationRad);
      const v: Vec3 = [ball.vx, ball.vy, ball.vz];
      const w: Vec3 = [ball.wx, ball.wy, ball.wz];
      const R = kit.ballRadiusM;
      const depth = Math.sqrt(1 - offset * offset);
      const aside = plus(times(side, right), times(height, face));
      const arm = times(R, minus(aside, times(depth, ahead)));
      const outward = times(1 / offset, aside);
      // The cue's end takes up the sideways momentum: its speed is −(m/m_e) v aside. Exact.
      const surface = dot(plus(v, cross(w, arm)), outward);
      expect(surface).toBeCloseTo(-kit.massRatio * dot(v, outward), 10);
      // One impulse at one point: ω = r × v / (2/5 R²), and nothing square to both axes.
      const expected = times(2.5 / (R * R), cross(arm, v));
      expect(length(minus(w, expected))).toBeLessThan(1e-9);
      expect(dot(v, cross(ahead, outward))).toBeCloseTo(0, 12);
    }
  });

  it('turns with the aim and nothing else', () => {
    const stroke = { side: 0.3, height: -0.2, elevationRad: 0.2, speedMps: 3 };
    const straight = strike({ ...stroke, aimRad: 0 }, DEFAULT_KIT);
    const aimed = strike({ ...stroke, aimRad: 0.7 }, DEFAULT_KIT);
    expect(Math.hypot(aimed.vx, aimed.vy)).toBeCloseTo(3, 12);
    const turn = Math.atan2(aimed.vx, aimed.vy) - Math.atan2(straight.vx, straight.vy);
    expect(turn).toBeCloseTo(0.7, 12);
    expect(aimed.vz).toBeCloseTo(straight.vz, 12);
    expect(aimed.wz).toBeCloseTo(straight.wz, 12);
  });

  it('mirrors: the other side gives the other squirt and the other spin', () => {
    const stroke = { aimRad: 0, height: 0.1, elevationRad: 0.4, speedMps: 3 };
    const right = strike({ ...stroke, side: 0.35 }, DEFAULT_KIT);
    const left = strike({ ...stroke, side: -0.35 }, DEFAULT_KIT);
    expect(left.vx).toBeCloseTo(-right.vx, 13);
    expect(left.vy).toBeCloseTo(right.vy, 13);
    expect(left.wy).toBeCloseTo(-right.wy, 11);
    expect(left.wz).toBeCloseTo(-right.wz, 11);
    expect(right.wz).toBeGreaterThan(0);
  });

  it('leaves along the cue for a cue without end mass, however the contact lies', () => {
    const kit = { ...DEFAULT_KIT, massRatio: Number.POSITIVE_INFINITY };
    const ball = strike(
      { aimRad: 0, side: -0.4, height: 0.3, elevationRad: 0.6, speedMps: 2 },
      kit,
    );
    expect(ball.vx).toBeCloseTo(0, 15);
    expect(ball.vz / ball.vy).toBeCloseTo(-Math.tan(0.6), 13);
  });
});

describe('squirtAngle', () => {
  it('is none for a centre hit and none for a cue without end mass', () => {
    expect(squirtAngle(0, 22)).toBe(0);
    expect(squirtAngle(0.5, Number.POSITIVE_INFINITY)).toBe(0);
  });

  it('grows with the offset as far as a tip can strike, and with the end mass', () => {
    let last = 0;
    for (let offset = 0.01; offset <= 0.5; offset += 0.01) {
      expect(squirtAngle(offset, 22)).toBeGreaterThan(last);
      expect(squirtAngle(offset, 12)).toBeGreaterThan(squirtAngle(offset, 22));
      last = squirtAngle(offset, 22);
    }
  });
});
