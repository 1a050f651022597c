import { describe, expect, it } from 'vitest';
import type { BallState } from '../../../../src/engine/ball/ball-state';
import {
  afterContact,
  ballFrictionAt,
  kickOf,
  newKick,
} from '../../../../src/engine/impacts/ball-on-ball';
import { seededRandom } from '../../../harness/seeded-random';
import { cross, dot, length, minus, plus, times, type Vec3 } from '../../../truth/reference/vec3';
import { anyBall, anyKit } from '../ball/random-balls';

const velocity = ({ vx, vy, vz }: BallState): Vec3 => [vx, vy, vz];
const spin = ({ wx, wy, wz }: BallState): Vec3 => [wx, wy, wz];

/** Any two balls that touch, the cue ball perhaps a little up in the air, and what comes of it. */
function meeting(random: () => number) {
  const kit = anyKit(random);
  const way = 2 * Math.PI * random();
  const dip = random() < 0.5 ? 0 : 0.6 * random();
  const n: Vec3 = [Math.cos(dip) * Math.sin(way), Math.cos(dip) * Math.cos(way), -Math.sin(dip)];
  const ball = { ...anyBall(random), vz: random() < 0.5 ? 0 : -random() };
  const kick = newKick();
  kickOf(ball, ...n, kit, kick);
  return { kit, n, ball, kick, after: afterContact(ball, ...n, kick, kit) };
}

function meetings(count: number) {
  const random = seededRandom(1687);
  const found: ReturnType<typeof meeting>[] = [];
  while (found.length < count) {
    const one = meeting(random);
    if (one.kick.closingMps > 0) found.push(one);
  }
  return found;
}

/** How the touching surfaces slip over each other, cue ball over object ball. */
function slipOf(cue: BallState, object: BallState | null, n: Vec3, radiusM: number): Vec3 {
  const arm = times(radiusM, n);
  const surface = plus(velocity(cue), cross(spin(cue), arm));
  const other: Vec3 =
    object === null ? [0, 0, 0] : minus(velocity(object), cross(spin(object), arm));
  const relative = minus(surface, other);
  return minus(relative, times(dot(relative, n), n));
}

// Source: rigid-body mechanics of one impulse at one point. Exact.
describe('a contact of two balls', () => {
  const all = meetings(2000);

  it('keeps momentum, whatever the balls weigh', () => {
    for (const { kit, ball, after } of all) {
      const was = velocity(ball);
      const given = times(1 / kit.cueBallMassRatio, velocity(after.objectBall));
      const is = plus(velocity(after.cueBall), given);
      expect(length(minus(is, was))).toBeLessThan(1e-12);
    }
  });

  it('keeps each ball’s angular momentum about the point of contact', () => {
    for (const { kit, n, ball, after } of all) {
      const R = kit.ballRadiusM;
      const about = (one: BallState, side: number) =>
        plus(cross(times(side * R, n), velocity(one)), times(0.4 * R * R, spin(one)));
      const cue = minus(about(after.cueBall, -1), about(ball, -1));
      expect(length(cue) / R).toBeLessThan(1e-12);
      expect(length(about(after.objectBall, 1)) / R).toBeLessThan(1e-12);
    }
  });

  it('parts along the line of centres at the stated share of the closing speed', () => {
    for (const { kit, n, kick, after } of all) {
      const parting = dot(minus(velocity(after.objectBall), velocity(after.cueBall)), n);
      expect(parting).toBeCloseTo(kit.ballRestitution * kick.closingMps, 12);
    }
  });

  it('never gains energy', () => {
    for (const { kit, ball, after } of all) {
      const R = kit.ballRadiusM;
      const energy = (one: BallState) =>
        dot(velocity(one), velocity(one)) / 2 + 0.2 * R * R * dot(spin(one), spin(one));
      const is = energy(after.cueBall) + energy(after.objectBall) / kit.cueBallMassRatio;
      expect(is).toBeLessThanOrEqual(energy(ball) * (1 + 1e-12));
    }
  });

  it('rubs against the slip, as hard as friction can or just until the slip is gone', () => {
    for (const { kit, n, ball, kick, after } of all) {
      const before = slipOf(ball, null, n, kit.ballRadiusM);
      const impulse: Vec3 = [kick.x, kick.y, kick.z];
      const normal = dot(impulse, n);
      const rub = minus(impulse, times(normal, n));
      const most = ballFrictionAt(kit.ballFriction, length(before)) * normal;
      expect(length(cross(rub, before)) / length(before)).toBeLessThan(1e-12);
      expect(dot(rub, before)).toBeGreaterThanOrEqual(0);
      expect(length(rub)).toBeLessThanOrEqual(most + 1e-12);
      const left = slipOf(after.cueBall, after.objectBall, n, kit.ballRadiusM);
      expect(dot(left, before) / length(before)).toBeGreaterThan(-1e-12);
      if (length(rub) < most - 1e-12) expect(length(left)).toBeLessThan(1e-12);
    }
  });

  it('starts the object ball on the bed, two radii along the line of centres in plan', () => {
    for (const { kit, n, ball, after } of all.slice(0, 100)) {
      expect(after.objectBall.zM).toBe(0);
      expect(after.objectBall.xM - ball.xM).toBeCloseTo(2 * kit.ballRadiusM * n[0], 14);
      expect(after.objectBall.yM - ball.yM).toBeCloseTo(2 * kit.ballRadiusM * n[1], 14);
    }
  });
});

describe('kickOf at a graze', () => {
  it('keeps the direction that ever thinner contacts tend to', () => {
    const random = seededRandom(3);
    const kit = anyKit(random);
    const ball: BallState = { ...anyBall(random), vx: 0, vy: 2, vz: 0 };
    const directionAt = (cutRad: number) => {
      const kick = newKick();
      kickOf(ball, Math.sin(cutRad), Math.cos(cutRad), 0, kit, kick);
      return Math.atan2(kick.x, kick.y);
    };
    const limit = directionAt(Math.PI / 2);
    expect(directionAt(Math.PI / 2 - 1e-6)).toBeCloseTo(limit, 5);
    expect(directionAt(Math.PI / 2 - 1e-9)).toBeCloseTo(limit, 8);
    expect(directionAt(Math.PI / 2 + 1e-9)).toBeCloseTo(limit, 8);
  });

  it('says that nothing closes', () => {
    const random = seededRandom(4);
    const kick = newKick();
    kickOf({ ...anyBall(random), vx: 0, vy: 1, vz: 0 }, 0, -1, 0, anyKit(random), kick);
    expect(kick.closingMps).toBe(-1);
  });
});

describe('ballFrictionAt', () => {
  it('is a + b at rest, falls with slip, and tends to a', () => {
    const friction = { a: 0.01, b: 0.1, c: 2 };
    expect(ballFrictionAt(friction, 0)).toBeCloseTo(0.11, 15);
    expect(ballFrictionAt(friction, 0.5)).toBeCloseTo(0.01 + 0.1 / Math.E, 15);
    expect(ballFrictionAt(friction, 100)).toBeCloseTo(0.01, 15);
  });
});
