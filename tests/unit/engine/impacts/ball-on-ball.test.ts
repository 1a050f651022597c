import { describe, expect, it } from 'vitest';
import type { BallState } from '../../../../src/engine/ball/ball-state';
import {
  afterContact,
  ballFrictionAt,
  kickOf,
  newKick,
} from '../../../../src/engine/impacts/ball-on-ball';
import { seededRandom } from '../../../harness/seeded-random';
import { anyBall, anyKit } from '../ball/random-balls';

type Vector = readonly [number, number, number];

const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const plus = (a: Vector, b: Vector, times = 1): Vector => [
  a[0] + times * b[0],
  a[1] + times * b[1],
  a[2] + times * b[2],
];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const size = (a: Vector) => Math.sqrt(dot(a, a));
const velocity = ({ vx, vy, vz }: BallState): Vector => [vx, vy, vz];
const spin = ({ wx, wy, wz }: BallState): Vector => [wx, wy, wz];

/** Any two balls that touch, the cue ball perhaps a little up in the air, and what comes of it. */
function meeting(random: () => number) {
  const kit = anyKit(random);
  const way = 2 * Math.PI * random();
  const dip = random() < 0.5 ? 0 : 0.6 * random();
  const n: Vector = [Math.cos(dip) * Math.sin(way), Math.cos(dip) * Math.cos(way), -Math.sin(dip)];
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
function slipOf(cue: BallState, object: BallState | null, n: Vector, radiusM: number): Vector {
  const arm: Vector = [n[0] * radiusM, n[1] * radiusM, n[2] * radiusM];
  const surface = plus(velocity(cue), cross(spin(cue), arm));
  const other: Vector =
    object === null ? [0, 0, 0] : plus(velocity(object), cross(spin(object), arm), -1);
  const relative = plus(surface, other, -1);
  return plus(relative, n, -dot(relative, n));
}

// Source: rigid-body mechanics of one impulse at one point. Exact.
describe('a contact of two balls', () => {
  const all = meetings(2000);

  it('keeps momentum, whatever the balls weigh', () => {
    for (const { kit, ball, after } of all) {
      const was = velocity(ball);
      const is = plus(
        velocity(after.cueBall),
        velocity(after.objectBall),
        1 / kit.cueBallMassRatio,
      );
      expect(size(plus(is, was, -1))).toBeLessThan(1e-12);
    }
  });

  it('keeps each ball’s angular momentum about the point of contact', () => {
    for (const { kit, n, ball, after } of all) {
      const R = kit.ballRadiusM;
      const about = (one: BallState, side: number) =>
        plus(
          cross([side * n[0] * R, side * n[1] * R, side * n[2] * R], velocity(one)),
          spin(one),
          0.4 * R * R,
        );
      const cue = plus(about(after.cueBall, -1), about(ball, -1), -1);
      expect(size(cue) / R).toBeLessThan(1e-12);
      expect(size(about(after.objectBall, 1)) / R).toBeLessThan(1e-12);
    }
  });

  it('parts along the line of centres at the stated share of the closing speed', () => {
    for (const { kit, n, kick, after } of all) {
      const parting = dot(plus(velocity(after.objectBall), velocity(after.cueBall), -1), n);
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
      const impulse: Vector = [kick.x, kick.y, kick.z];
      const normal = dot(impulse, n);
      const rub = plus(impulse, n, -normal);
      const most = ballFrictionAt(kit.ballFriction, size(before)) * normal;
      expect(size(cross(rub, before)) / size(before)).toBeLessThan(1e-12);
      expect(dot(rub, before)).toBeGreaterThanOrEqual(0);
      expect(size(rub)).toBeLessThanOrEqual(most + 1e-12);
      const left = slipOf(after.cueBall, after.objectBall, n, kit.ballRadiusM);
      expect(dot(left, before) / size(before)).toBeGreaterThan(-1e-12);
      if (size(rub) < most - 1e-12) expect(size(left)).toBeLessThan(1e-12);
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
