import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BallState } from '../../src/engine/ball/ball-state';
import { STANDARD_GRAVITY } from '../../src/engine/ball/gravity';
import { type Play, play } from '../../src/engine/direct/contact';
import { type Layout, layoutOf } from '../../src/engine/direct/layout';
import { type Shot, strokeOf } from '../../src/engine/direct/shot';
import { solveAim } from '../../src/engine/direct/solve-aim';
import type { Kit } from '../../src/engine/kit/kit';
import { type Phase, stateAt } from '../../src/engine/motion/phase';
import { wrapped } from '../../src/engine/numerics/angle';
import { type Query, randomQuery } from '../harness/random-shots';
import { seededRandom } from '../harness/seeded-random';

const query = (slopeM_per_M: number) =>
  fc.integer().map((seed) => randomQuery(seededRandom(seed), slopeM_per_M));

/** Somewhere about the straight line, rad. */
const nearAim = fc.double({ min: -0.05, max: 0.05, noNaN: true });

/** Balls that the bed does not throw up again: without hops there is nothing left unflown. */
function grounded({ shot, kit }: Query): Query {
  return {
    shot: { ...shot, height: Math.abs(shot.height) },
    kit: { ...kit, bedRestitution: 0 },
  };
}

const played = ({ shot, kit }: Query, aimRad: number): Play =>
  play(strokeOf(shot, aimRad), layoutOf(shot, kit.ballRadiusM), kit);

describe('turning the whole table', () => {
  /** Clockwise seen from above. */
  const turn = ([x, y]: readonly [number, number], by: number): [number, number] => [
    x * Math.cos(by) + y * Math.sin(by),
    y * Math.cos(by) - x * Math.sin(by),
  ];

  function turnedLayout(layout: Layout, by: number): Layout {
    const [objectXM, objectYM] = turn([layout.objectXM, layout.objectYM], by);
    return { ...layout, objectXM, objectYM, bearingRad: layout.bearingRad + by };
  }

  function turnedKit(kit: Kit, by: number): Kit {
    const { rightM_per_M, alongM_per_M } = kit.bedSlope;
    const [right, along] = turn([rightM_per_M, alongM_per_M], by);
    return { ...kit, bedSlope: { rightM_per_M: right, alongM_per_M: along } };
  }

  it.each([0, 0.002])('turns all that happens, slope up to %d', (slope) => {
    const angle = fc.double({ min: -Math.PI, max: Math.PI, noNaN: true });
    let touches = 0;
    fc.assert(
      fc.property(query(slope), nearAim, angle, ({ shot, kit }, aimRad, by) => {
        const layout = layoutOf(shot, kit.ballRadiusM);
        const plain = play(strokeOf(shot, aimRad), layout, kit);
        const turned = play(
          strokeOf(shot, aimRad + by),
          turnedLayout(layout, by),
          turnedKit(kit, by),
        );
        expect(turned.contact === null).toBe(plain.contact === null);
        if (plain.contact === null || turned.contact === null) return;
        touches++;
        expect(turned.contact.timeS).toBeCloseTo(plain.contact.timeS, 8);
        for (const ball of ['cueBall', 'objectBall'] as const) {
          const { vx, vy, vz } = plain.contact.after[ball];
          const [x, y] = turn([vx, vy], by);
          expect(turned.contact.after[ball].vx).toBeCloseTo(x, 7);
          expect(turned.contact.after[ball].vy).toBeCloseTo(y, 7);
          expect(turned.contact.after[ball].vz).toBeCloseTo(vz, 7);
        }
      }),
      { numRuns: 300, seed: 11 },
    );
    expect(touches).toBeGreaterThan(60);
  });
});

describe('a larger or smaller table', () => {
  /** Under the same gravity, times grow as the root of lengths, and speeds with them. */
  function scaled({ shot, kit }: Query, k: number): Query {
    const root = Math.sqrt(k);
    const { a, b, c } = kit.ballFriction;
    return {
      shot: { ...shot, distanceM: shot.distanceM * k, speedMps: shot.speedMps * root },
      kit: {
        ...kit,
        ballRadiusM: kit.ballRadiusM * k,
        tipRadiusM: kit.tipRadiusM * k,
        spinDecayRadS2: kit.spinDecayRadS2 / k,
        ballFriction: { a, b, c: c / root },
      },
    };
  }

  function apart(asked: Query, k: number): number {
    const plain = solveAim(asked.shot, asked.kit);
    const other = scaled(asked, k);
    const large = solveAim(other.shot, other.kit);
    expect(large.ok).toBe(plain.ok);
    if (!plain.ok || !large.ok) return 0;
    expect(large.otherAimsRad).toHaveLength(plain.otherAimsRad.length);
    expect(large.aimOffsetM / k - plain.aimOffsetM).toBeCloseTo(0, 4);
    return Math.abs(large.aimRad - plain.aimRad);
  }

  const factor = fc.double({ min: 0.75, max: 1.35, noNaN: true });

  it.each([0, 0.002])('has the same angles while the ball keeps to the bed, slope %d', (slope) => {
    fc.assert(
      fc.property(query(slope), factor, (asked, k) => {
        expect(apart(grounded(asked), k)).toBeLessThan(1e-9);
      }),
      { numRuns: 200, seed: 12 },
    );
  });

  it('has the same angles but for the hops too short to be flown', () => {
    fc.assert(
      fc.property(query(0), factor, (asked, k) => {
        expect(apart(asked, k)).toBeLessThan(1e-5);
      }),
      { numRuns: 200, seed: 13 },
    );
  });
});

/** Of one ball over its mass, height and slope included, J/kg. */
function energy({ xM, yM, zM, vx, vy, vz, wx, wy, wz }: BallState, kit: Kit): number {
  const { rightM_per_M, alongM_per_M } = kit.bedSlope;
  const spin2 = wx ** 2 + wy ** 2 + wz ** 2;
  return (
    (vx ** 2 + vy ** 2 + vz ** 2) / 2 +
    (kit.ballRadiusM ** 2 * spin2) / 5 +
    STANDARD_GRAVITY * (zM - xM * rightM_per_M - yM * alongM_per_M)
  );
}

/** States all along a path, from the tip on. */
function statesAlong({ leaving, journey }: Play): BallState[] {
  const within = (phase: Phase) =>
    [0, 0.2, 0.4, 0.6, 0.8, 1].map((share) => stateAt(phase, share * phase.durationS));
  return [leaving, ...journey.phases.flatMap(within)];
}

describe.each([0, 0.002])('energy, slope up to %d', (slope) => {
  it('never grows along a path', () => {
    fc.assert(
      fc.property(query(slope), nearAim, (asked, aimRad) => {
        const energies = statesAlong(played(asked, aimRad)).map((ball) => energy(ball, asked.kit));
        const rounding = 1e-12 * Math.max(...energies.map(Math.abs));
        energies.slice(1).forEach((now, index) => {
          expect(now).toBeLessThanOrEqual((energies[index] ?? Number.NaN) + rounding);
        });
      }),
      { numRuns: 300, seed: 14 },
    );
  });

  it('never grows through contact', () => {
    let touches = 0;
    fc.assert(
      fc.property(query(slope), nearAim, (asked, aimRad) => {
        const { contact } = played(asked, aimRad);
        if (contact === null) return;
        touches++;
        const { kit } = asked;
        const atRest = { ...contact.after.objectBall, vx: 0, vy: 0, vz: 0, wx: 0, wy: 0, wz: 0 };
        const before = kit.cueBallMassRatio * energy(contact.cueBall, kit) + energy(atRest, kit);
        const { cueBall, objectBall } = contact.after;
        const after = kit.cueBallMassRatio * energy(cueBall, kit) + energy(objectBall, kit);
        expect(after).toBeLessThanOrEqual(before + 1e-12 * Math.abs(before));
      }),
      { numRuns: 300, seed: 15 },
    );
    expect(touches).toBeGreaterThan(60);
  });
});

describe('angular momentum about the point on the bed', () => {
  it('is kept on a level bed, hops and all, until the ball rolls: the bed acts through it', () => {
    fc.assert(
      fc.property(query(0), nearAim, (asked, aimRad) => {
        const lever = (2 / 5) * asked.kit.ballRadiusM;
        const kept = (ball: BallState) => [ball.vx + lever * ball.wy, ball.vy - lever * ball.wx];
        const { leaving, journey } = played(asked, aimRad);
        const [x0 = Number.NaN, y0 = Number.NaN] = kept(leaving);
        for (const phase of journey.phases) {
          if (phase.motion === 'rolling') break;
          const [x = Number.NaN, y = Number.NaN] = kept(stateAt(phase, phase.durationS));
          expect(Math.hypot(x - x0, y - y0)).toBeLessThan(1e-12 * asked.shot.speedMps);
        }
      }),
      { numRuns: 500, seed: 16 },
    );
  });
});

describe('the aim', () => {
  const INPUTS = ['distanceM', 'cutRad', 'side', 'height', 'elevationRad', 'speedMps'] as const;

  /** The aim nearest to `aimRad` of all that go, or null where none does on the same hops. */
  function aimBeside({ shot, kit }: Query, aimRad: number, phases: number): number | null {
    const result = solveAim(shot, kit);
    if (!result.ok) return null;
    const nearest = [result.aimRad, ...result.otherAimsRad].reduce((best, aim) =>
      Math.abs(aim - aimRad) < Math.abs(best - aimRad) ? aim : best,
    );
    return played({ shot, kit }, nearest).journey.phases.length === phases ? nearest : null;
  }

  const moved = (
    { shot, kit }: Query,
    input: keyof Shot & (typeof INPUTS)[number],
    by: number,
  ) => ({
    kit,
    shot: { ...shot, [input]: shot[input] + by },
  });

  it.each(INPUTS)(
    'follows %s without leaps, away from refusals, landings and other roots',
    (input) => {
      let followed = 0;
      fc.assert(
        fc.property(query(0.002), (asked) => {
          const result = solveAim(asked.shot, asked.kit);
          if (!result.ok) return;
          const { length } = played(asked, result.aimRad).journey.phases;
          const far = aimBeside(moved(asked, input, 1e-5), result.aimRad, length);
          const near = aimBeside(moved(asked, input, 1e-6), result.aimRad, length);
          if (far === null || near === null) return;
          followed++;
          // A leap would be as large for the small step as for the large one.
          expect(Math.abs(wrapped(near - result.aimRad))).toBeLessThan(
            0.5 * Math.abs(wrapped(far - result.aimRad)) + 1e-9,
          );
          expect(Math.abs(wrapped(far - result.aimRad))).toBeLessThan(1e-3);
        }),
        { numRuns: 300, seed: 17 },
      );
      expect(followed).toBeGreaterThan(240);
    },
  );
});
