import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BallState, restingAt } from '../../../../src/engine/ball/ball-state';
import { afterCushion } from '../../../../src/engine/impacts/cushion';
import { restitutionAt } from '../../../../src/engine/impacts/restitution-at';
import {
  type Cushion,
  DEFAULT_CUSHION,
  DEFAULT_KIT,
  type Kit,
} from '../../../../src/engine/kit/kit';
import { KIT_NUMBERS } from '../../../../src/engine/kit/kit-numbers';
import type { Range } from '../../../../src/engine/numerics/range';
import { between, type Random, seededRandom } from '../../../harness/seeded-random';
import { anyBall, anyKit } from '../ball/random-balls';

const inRange = (random: Random, { min, max }: Range) => between(random, min, max);

/** Any cushion the engine accepts; now and then one at an end of a range. */
function anyCushion(random: Random): Cushion {
  const value = (range: Range) => {
    const where = random();
    if (where < 0.1) return range.min;
    return where > 0.9 ? range.max : inRange(random, range);
  };
  return {
    restitution: value(KIT_NUMBERS['cushion.restitution'].range),
    lossPerMps: value(KIT_NUMBERS['cushion.lossPerMps'].range),
    lossFromMps: value(KIT_NUMBERS['cushion.lossFromMps'].range),
    friction: value(KIT_NUMBERS['cushion.friction'].range),
    noseHeight: value(KIT_NUMBERS['cushion.noseHeight'].range),
  };
}

interface Meeting {
  readonly kit: Kit;
  readonly cushion: Cushion;
  readonly ball: BallState;
  readonly n: readonly [number, number];
}

/** A ball on the bed that moves into a cushion; one in the air where `isFlying`. */
function anyMeeting(random: Random, isFlying = false): Meeting {
  const kit = { ...anyKit(random), slideFriction: between(random, 0.02, 1) };
  const cushion = anyCushion(random);
  const ball = anyBall(random);
  const way = Math.atan2(ball.vx, ball.vy) + between(random, -1.55, 1.55);
  const n = [Math.sin(way), Math.cos(way)] as const;
  if (!isFlying) return { kit, cushion, ball, n };
  const zM = between(random, 0.001, 0.9 * kit.ballRadiusM);
  return { kit, cushion, ball: { ...ball, zM, vz: between(random, -0.02, 0.02) }, n };
}

const meetings = (count: number, isFlying = false) => {
  const random = seededRandom(1863);
  return Array.from({ length: count }, () => {
    const meeting = anyMeeting(random, isFlying);
    return { ...meeting, after: met(meeting) };
  });
};

const met = ({ kit, cushion, ball, n }: Meeting) => afterCushion(ball, ...n, { ...kit, cushion });

/** A seed of any kind, for laws that should hold whatever comes. */
const meeting = fc.integer().map((seed) => anyMeeting(seededRandom(seed)));

/** Over mass. */
function energyOf({ vx, vy, vz, wx, wy, wz }: BallState, radiusM: number): number {
  const spin = wx * wx + wy * wy + wz * wz;
  return (vx * vx + vy * vy + vz * vz) / 2 + 0.2 * radiusM * radiusM * spin;
}

/** Velocity, and spin times the radius: along the rail (right of n), into it, up. */
function seenFromRail(ball: BallState, [nx, ny]: Meeting['n'], radiusM: number) {
  const turned = (x: number, y: number) => [x * ny - y * nx, x * nx + y * ny] as const;
  const [vAlong, vInto] = turned(ball.vx, ball.vy);
  const [qAlong, qInto] = turned(radiusM * ball.wx, radiusM * ball.wy);
  return { vAlong, vInto, vUp: ball.vz, qAlong, qInto, qUp: radiusM * ball.wz };
}

/** The nose's direction from the ball's centre: how far it lies into the cushion and up. */
function noseOf({ cushion, kit, ball }: Meeting) {
  const up = cushion.noseHeight - 1 - ball.zM / kit.ballRadiusM;
  return { into: Math.sqrt(1 - up * up), up };
}

describe('a ball that meets a cushion', () => {
  it('never gains energy', () => {
    fc.assert(
      fc.property(meeting, (one) => {
        const { ballRadiusM } = one.kit;
        const gain = energyOf(met(one), ballRadiusM) / energyOf(one.ball, ballRadiusM);
        expect(gain).toBeLessThanOrEqual(1 + 1e-12);
      }),
      { numRuns: 500 },
    );
  });

  it('does the same seen in a mirror', () => {
    fc.assert(
      fc.property(meeting, (one) => {
        const mirrored = (ball: BallState): BallState => ({
          ...ball,
          xM: -ball.xM,
          vx: -ball.vx,
          wy: -ball.wy,
          wz: -ball.wz,
        });
        const [nx, ny] = one.n;
        const seen = mirrored(met({ ...one, ball: mirrored(one.ball), n: [-nx, ny] }));
        const plain = met(one);
        expect(Math.hypot(seen.vx - plain.vx, seen.vy - plain.vy)).toBeLessThan(1e-9);
        expect(Math.hypot(seen.wx - plain.wx, seen.wy - plain.wy, seen.wz - plain.wz)).toBeLessThan(
          1e-7,
        );
      }),
    );
  });

  it('does the same at twice the speed, twice as fast, where its loss comes at twice the speed', () => {
    // Source: nothing else in the model has a speed of its own. Exact.
    fc.assert(
      fc.property(meeting, (one) => {
        const { ball } = one;
        const faster = {
          ...ball,
          vx: 2 * ball.vx,
          vy: 2 * ball.vy,
          wx: 2 * ball.wx,
          wy: 2 * ball.wy,
          wz: 2 * ball.wz,
        };
        const { lossPerMps, lossFromMps } = one.cushion;
        const scaled = { lossPerMps: lossPerMps / 2, lossFromMps: lossFromMps * 2 };
        const cushion = { ...one.cushion, ...scaled };
        const [plain, fast] = [met(one), met({ ...one, cushion, ball: faster })];
        expect(fast.vx / 2).toBeCloseTo(plain.vx, 9);
        expect(fast.vy / 2).toBeCloseTo(plain.vy, 9);
        expect(fast.wz / 2).toBeCloseTo(plain.wz, 7);
      }),
    );
  });

  it('parts from it, and stays where it was, neither sunk nor undefined', () => {
    for (const { after, ball, n, ...rest } of meetings(3000)) {
      const { into, up } = noseOf({ ball, n, ...rest });
      const { vInto } = seenFromRail(after, n, 1);
      expect(into * vInto + up * after.vz).toBeLessThan(0);
      expect(Object.values(after).every(Number.isFinite)).toBe(true);
      expect(after.vz).toBeGreaterThanOrEqual(0);
      expect([after.xM, after.yM, after.zM]).toEqual([ball.xM, ball.yM, 0]);
    }
  });

  it('keeps its angular momentum about the line through nose and bed', () => {
    // Source: every impulse passes through one of the two points. Exact.
    for (const { after, ...one } of meetings(1000)) {
      const { into, up } = noseOf(one);
      const about = (ball: BallState) => {
        const { vAlong, qInto, qUp } = seenFromRail(ball, one.n, one.kit.ballRadiusM);
        return into * (0.4 * qInto + vAlong) + (1 + up) * 0.4 * qUp;
      };
      expect(about(after)).toBeCloseTo(about(one.ball), 11);
    }
  });

  it('spins on about the vertical as before where the nose has no friction', () => {
    for (const one of meetings(200)) {
      const smooth = { ...one, cushion: { ...one.cushion, friction: 0 } };
      expect(met(smooth).wz).toBe(one.ball.wz);
    }
  });
});

describe('what a cushion gives back at a speed', () => {
  it('is all of its restitution up to a speed, and by a straight line less above', () => {
    // Source: e(v) = max(0.58, e₀ − 0.085 s/m · max(0, v − 2.0 m/s)), as stated beside the law.
    for (const [mps, share] of [
      [0, 0.98],
      [2, 0.98],
      [3, 0.895],
      [5, 0.725],
      [6.5, 0.5975],
      [6.8, 0.58],
      [20, 0.58],
    ] as const) {
      expect(restitutionAt(DEFAULT_CUSHION, mps)).toBeCloseTo(share, 12);
    }
  });

  it('leaps nowhere, rises nowhere, and sends no harder ball back slower, on any cushion', () => {
    const random = seededRandom(2009);
    for (let count = 0; count < 300; count++) {
      const cushion = anyCushion(random);
      const stepMps = 0.01;
      let last = restitutionAt(cushion, 0);
      expect(last).toBe(cushion.restitution);
      const wrong: number[] = [];
      for (let step = 1; step < 1500; step++) {
        const next = restitutionAt(cushion, step * stepMps);
        const isLeap = last - next > cushion.lossPerMps * stepMps + 1e-12;
        const isSlower = next * step < last * (step - 1) - 1e-12;
        if (isLeap || next > last || isSlower) wrong.push(step);
        last = next;
      }
      expect(wrong).toEqual([]);
    }
  });
});

describe('a square hit', () => {
  it('comes back square, whatever topspin or backspin it has', () => {
    const random = seededRandom(5);
    for (let count = 0; count < 200; count++) {
      const wx = between(random, -100, 100);
      const ball = { ...restingAt(0, 0), vy: between(random, 0.1, 4), wx };
      const after = afterCushion(ball, 0, 1, { ...anyKit(random), cushion: anyCushion(random) });
      expect(after.vy).toBeLessThan(0);
      expect([after.vx, after.wy, after.wz].map(Math.abs)).toEqual([0, 0, 0]);
    }
  });
});

describe('a ball that meets the nose in the air', () => {
  const all = meetings(1500, true).filter(({ after, ball }) => after !== ball);

  it('comes off the nose with just its share of the speed it met it with', () => {
    // Source: with no bed to press against, friction takes nothing from the normal speed, and work
    // goes as speed squared. Exact.
    expect(all.length).toBeGreaterThan(1000);
    for (const { after, ...one } of all) {
      const { into, up } = noseOf(one);
      const closing = (ball: BallState) => into * seenFromRail(ball, one.n, 1).vInto + up * ball.vz;
      const kept = restitutionAt(one.cushion, seenFromRail(one.ball, one.n, 1).vInto);
      expect(closing(after)).toBeCloseTo(-kept * closing(one.ball), 11);
    }
  });

  it('keeps its angular momentum about the nose, and gains no energy', () => {
    for (const { after, ...one } of all) {
      const R = one.kit.ballRadiusM;
      const { into, up } = noseOf(one);
      const about = (ball: BallState) => {
        const { vAlong, vInto, vUp, qAlong, qInto, qUp } = seenFromRail(ball, one.n, R);
        return [
          up * vInto - into * vUp + 0.4 * qAlong,
          -up * vAlong + 0.4 * qInto,
          into * vAlong + 0.4 * qUp,
        ];
      };
      const was = about(one.ball);
      about(after).forEach((is, axis) => {
        expect(is).toBeCloseTo(was[axis] ?? Number.NaN, 11);
      });
      expect(energyOf(after, R)).toBeLessThanOrEqual(energyOf(one.ball, R) * (1 + 1e-12));
    }
  });

  it('is driven down by a nose above its centre and up by one below', () => {
    const flying = (zM: number): BallState => ({ ...restingAt(0, 0), zM, vy: 1 });
    const R = DEFAULT_KIT.ballRadiusM;
    expect(afterCushion(flying(0.1 * R), 0, 1, DEFAULT_KIT).vz).toBeLessThan(0);
    expect(afterCushion(flying(0.6 * R), 0, 1, DEFAULT_KIT).vz).toBeGreaterThan(0);
  });
});

describe('a ball that the cushion has nothing to answer', () => {
  it.each([
    ['moves away', { vy: -1, wz: 40 }],
    ['moves along the rail', { vx: 1, wz: -40 }],
    ['lies still and spins', { wz: 90 }],
    ['moves into it too slowly for its square to be a number', { vy: 1e-200, wz: 90 }],
    ['passes over the nose', { vy: 2, zM: 1.27 * DEFAULT_KIT.ballRadiusM }],
  ])('is left alone when it %s', (_, motion) => {
    const ball = { ...restingAt(1, 2), ...motion };
    expect(afterCushion(ball, 0, 1, DEFAULT_KIT)).toBe(ball);
  });
});

describe('a ball that reaches the cushion just as it comes down on the bed', () => {
  it('is thrown back by the bed first', () => {
    const rolling = { ...restingAt(0, 0), vy: 2, wx: -2 / DEFAULT_KIT.ballRadiusM };
    const met = (vz: number) => afterCushion({ ...rolling, vz }, 0, 1, DEFAULT_KIT);
    // Source: a ball that rolls has no slip, so that the bed turns its −1 m/s into +0.5 and no more.
    expect(met(-1)).toEqual(met(DEFAULT_KIT.bedRestitution));
  });
});
