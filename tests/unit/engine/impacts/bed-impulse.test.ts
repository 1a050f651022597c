import { describe, expect, it } from 'vitest';
import { type BallState, restingAt, slipX, slipY } from '../../../../src/engine/ball/ball-state';
import { afterBed } from '../../../../src/engine/impacts/bed-impulse';
import { DEFAULT_KIT, type Kit } from '../../../../src/engine/kit/kit';
import { between, seededRandom } from '../../../harness/seeded-random';
import { anyBall, anyKit } from '../ball/random-balls';

/** Over mass: kinetic energy of the centre and of the spin. */
function energyOf({ vx, vy, vz, wx, wy, wz }: BallState, radiusM: number): number {
  return (
    (vx * vx + vy * vy + vz * vz) / 2 + 0.2 * radiusM * radiusM * (wx * wx + wy * wy + wz * wz)
  );
}

interface Landing {
  readonly kit: Kit;
  readonly before: BallState;
  readonly after: BallState;
}

function landings(count: number): Landing[] {
  const random = seededRandom(count);
  return Array.from({ length: count }, () => {
    const kit = anyKit(random);
    const before = { ...anyBall(random), vz: -Math.exp(between(random, -9, 2)) };
    return { kit, before, after: afterBed(before, kit) };
  });
}

describe('a ball that the bed throws back', () => {
  const all = landings(3000);
  const flown = all.filter(({ after }) => after.vz > 0);

  it('comes back with its share of speed, or stays down where that is next to none', () => {
    expect(flown.length).toBeGreaterThan(1000);
    for (const { kit, before, after } of flown) {
      expect(after.vz).toBeCloseTo(-kit.bedRestitution * before.vz, 12);
    }
    for (const { kit, before, after } of all) {
      expect(after.vz).toBeGreaterThanOrEqual(0);
      if (after.vz === 0) expect(-kit.bedRestitution * before.vz).toBeLessThan(0.005);
    }
  });

  it('never gains energy', () => {
    for (const { kit, before, after } of all) {
      const { ballRadiusM } = kit;
      const gained = energyOf(after, ballRadiusM) / energyOf(before, ballRadiusM);
      expect(gained).toBeLessThanOrEqual(1 + 1e-12);
    }
  });

  it('feels friction against its slip, within the cone, never past the end of the slip', () => {
    for (const { kit, before, after } of all) {
      const { ballRadiusM: R, slideFriction } = kit;
      const [jx, jy] = [after.vx - before.vx, after.vy - before.vy];
      const [ux, uy] = [slipX(before, R), slipY(before, R)];
      const slip = Math.hypot(ux, uy);
      expect(Math.hypot(jx, jy)).toBeLessThanOrEqual(
        slideFriction * (after.vz - before.vz) + 1e-12,
      );
      expect(jx * ux + jy * uy).toBeLessThanOrEqual(0);
      expect((jx * uy - jy * ux) / slip).toBeCloseTo(0, 12);
      const left = (slipX(after, R) * ux + slipY(after, R) * uy) / slip;
      expect(left).toBeGreaterThan(-1e-12);
      // Where the cone does not limit it, the slip is gone: the lesser of the two, always one.
      const held = Math.hypot(jx, jy) < slideFriction * (after.vz - before.vz) - 1e-12;
      if (held) expect(left).toBeLessThan(1e-12);
    }
  });

  it('keeps its angular momentum about the point it touches', () => {
    for (const { kit, before, after } of all) {
      const { ballRadiusM: R } = kit;
      // R ẑ × v + (2/5) R² ω, over mass: every impulse of the bed passes through that point. Exact.
      const about = ({ vx, vy, wx, wy, wz }: BallState) => [
        -R * vy + 0.4 * R * R * wx,
        R * vx + 0.4 * R * R * wy,
        0.4 * R * R * wz,
      ];
      const [is, was] = [about(after), about(before)];
      for (const axis of [0, 1, 2]) {
        expect(((is[axis] ?? 9) - (was[axis] ?? 0)) / R).toBeCloseTo(0, 12);
      }
    }
  });
});

describe('a ball that the bed has nothing to answer', () => {
  it('is left alone in the air and on its way up', () => {
    const falling: BallState = { ...restingAt(0, 0), zM: 0.02, vz: -3, wx: 5 };
    expect(afterBed(falling, DEFAULT_KIT)).toBe(falling);
    const rising: BallState = { ...restingAt(0, 0), vz: 0.2, vx: 1 };
    expect(afterBed(rising, DEFAULT_KIT)).toBe(rising);
  });

  it('stays down from a rise too small to fly', () => {
    const twitching: BallState = { ...restingAt(1, 2), vz: 1e-6, vx: 1, wy: 4 };
    expect(afterBed(twitching, DEFAULT_KIT)).toEqual({ ...twitching, vz: 0 });
  });

  it('has no slip to lose and keeps rolling through its hops', () => {
    const { ballRadiusM: R } = DEFAULT_KIT;
    const rolling: BallState = { ...restingAt(0, 0), vy: 2, wx: -2 / R, wz: 7, vz: -1 };
    expect(afterBed(rolling, DEFAULT_KIT)).toEqual({ ...rolling, vz: 0.5 });
  });

  it('answers once: a ball already answered does not feel it again', () => {
    for (const { kit, after } of landings(200)) expect(afterBed(after, kit)).toEqual(after);
  });
});
