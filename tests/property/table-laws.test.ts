import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BallState } from '../../src/engine/ball/ball-state';
import { STANDARD_GRAVITY } from '../../src/engine/ball/gravity';
import { DEFAULT_CUSHION, type Kit } from '../../src/engine/kit/kit';
import { stateAt } from '../../src/engine/motion/phase';
import { ballAt } from '../../src/engine/table/ball-at';
import { isOnBed } from '../../src/engine/table/check-table';
import { nearestOnCushion, newNearest } from '../../src/engine/table/nearest-on-cushion';
import { playTable } from '../../src/engine/table/play-table';
import type { BallRun, TableEvent, TablePlay } from '../../src/engine/table/table-play';
import { CAMPAIGN_TIMEOUT_MS, campaignSize } from '../harness/campaign-size';
import { randomTableQuery, type TableQuery } from '../harness/random-tables';
import { seededRandom } from '../harness/seeded-random';

const query = (slopeM_per_M: number) =>
  fc.integer().map((seed) => randomTableQuery(seededRandom(seed), slopeM_per_M));

function played({ balls, stroke, kit, shape }: TableQuery): TablePlay {
  const result = playTable(balls, stroke, kit, shape);
  if (!result.ok) throw new RangeError(result.reason);
  return result;
}

const LOOKS = 60;

/** Every moment at which a phase begins, or something is told, and many more. */
function moments({ balls, events, endS }: TablePlay): number[] {
  const begun = balls.flatMap(({ phases }) => phases.map(({ startS }) => startS));
  const even = Array.from({ length: LOOKS + 1 }, (_, look) => (endS * look) / LOOKS);
  return [...begun, ...events.map(({ timeS }) => timeS), ...even].sort((a, b) => a - b);
}

/** Over its mass, height and slope included, J/kg. */
function energy({ xM, yM, zM, vx, vy, vz, wx, wy, wz }: BallState, kit: Kit): number {
  const { rightM_per_M, alongM_per_M } = kit.bedSlope;
  return (
    (vx ** 2 + vy ** 2 + vz ** 2) / 2 +
    (kit.ballRadiusM ** 2 * (wx ** 2 + wy ** 2 + wz ** 2)) / 5 +
    STANDARD_GRAVITY * (zM - xM * rightM_per_M - yM * alongM_per_M)
  );
}

/** A ball that has left the bed keeps what it had. */
function stateOf(run: BallRun, timeS: number): BallState {
  const state = ballAt(run, timeS);
  const last = run.phases.at(-1);
  if (state !== null) return state;
  if (last === undefined) throw new RangeError('a ball that never moved has left the bed');
  return stateAt(last, last.durationS);
}

/** How deep balls lie in each other, m; below 0: not at all. */
function deepestOverlap(states: readonly (BallState | null)[], radiusM: number): number {
  const here = states.filter((state) => state !== null);
  const depths = here.flatMap((a, at) =>
    here.slice(at + 1).map((b) => 2 * radiusM - Math.hypot(a.xM - b.xM, a.yM - b.yM, a.zM - b.zM)),
  );
  return Math.max(Number.NEGATIVE_INFINITY, ...depths);
}

/** How deep the balls lie in a cushion, m, likewise. */
function deepestInCushion(
  states: readonly (BallState | null)[],
  { shape, kit }: TableQuery,
): number {
  const nearest = newNearest();
  const { ballRadiusM } = kit;
  const depths = states.flatMap((state) =>
    shape.cushions.map((cushion) => {
      if (state === null) return Number.NEGATIVE_INFINITY;
      nearestOnCushion(cushion, state.xM, state.yM, nearest);
      const riseM = (DEFAULT_CUSHION.noseHeight - 1) * ballRadiusM - state.zM;
      return ballRadiusM - Math.hypot(nearest.awayM, riseM);
    }),
  );
  return Math.max(...depths);
}

/** The laws hold on any bed; that of the tilted one takes longer to play. */
const BEDS: readonly (readonly [number, number, number])[] = [
  [0, 150, 4000],
  [0.002, 50, 1000],
];

describe.each(BEDS)('on a bed tilted up to %d', (slope, sample, whole) => {
  const numRuns = campaignSize(sample, whole);

  it(
    'energy never grows, whatever meets what',
    () => {
      fc.assert(
        fc.property(query(slope), (asked) => {
          const play = played(asked);
          const { kit } = asked;
          let before = Number.POSITIVE_INFINITY;
          let mostGrown = Number.NEGATIVE_INFINITY;
          for (const timeS of moments(play)) {
            const now = play.balls
              .map((run, ball) => {
                const massRatio = ball === 0 ? kit.cueBallMassRatio : 1;
                return massRatio * energy(stateOf(run, timeS), kit);
              })
              .reduce((sum, one) => sum + one, 0);
            mostGrown = Math.max(mostGrown, now - before);
            before = now;
          }
          // Rounding of up to 60 J/kg; and balls pressed together are moved apart by nanometres.
          expect(mostGrown).toBeLessThanOrEqual(1e-11);
        }),
        { numRuns, seed: 21 },
      );
    },
    CAMPAIGN_TIMEOUT_MS,
  );

  it(
    'no ball is ever more than a micrometre within another or a cushion',
    () => {
      fc.assert(
        fc.property(query(slope), (asked) => {
          const play = played(asked);
          const depths = moments(play).map((timeS) => {
            const states = play.balls.map((run) => ballAt(run, timeS));
            return Math.max(
              deepestOverlap(states, asked.kit.ballRadiusM),
              deepestInCushion(states, asked),
            );
          });
          expect(Math.max(...depths)).toBeLessThan(1e-6);
        }),
        { numRuns, seed: 22 },
      );
    },
    CAMPAIGN_TIMEOUT_MS,
  );

  it(
    'every stroke is played to its end, and every ball lies somewhere it can, or is gone',
    () => {
      const kinds = new Set<string>();
      fc.assert(
        fc.property(query(slope), (asked) => {
          const { balls, complete } = played(asked);
          expect(complete).toBe(true);
          for (const { outcome } of balls) {
            kinds.add(outcome.kind);
            if (outcome.kind !== 'rests' && outcome.kind !== 'hangs') continue;
            expect(isOnBed(outcome, asked.kit, asked.shape)).toBe(true);
          }
        }),
        { numRuns: 4 * numRuns, seed: 23 },
      );
      expect([...kinds].sort()).toEqual(['hangs', 'off-table', 'pocketed', 'rests']);
    },
    CAMPAIGN_TIMEOUT_MS,
  );

  it('events come in the order of time, and each ball’s phases one after the other', () => {
    fc.assert(
      fc.property(query(slope), (asked) => {
        const { balls, events, endS } = played(asked);
        const times = events.map(({ timeS }) => timeS);
        expect(times).toEqual([...times].sort((a, b) => a - b));
        expect(times.at(-1)).toBeLessThanOrEqual(endS);
        for (const { phases } of balls) {
          phases.slice(1).forEach(({ startS }, at) => {
            const earlier = phases[at];
            const endedS = (earlier?.startS ?? Number.NaN) + (earlier?.durationS ?? Number.NaN);
            expect(startS).toBeGreaterThan(endedS - 1e-12);
          });
        }
      }),
      { numRuns: 50, seed: 24 },
    );
  });

  it('the same question has the same answer', () => {
    fc.assert(
      fc.property(query(slope), (asked) => {
        expect(played(asked)).toEqual(played(asked));
      }),
      { numRuns: 20, seed: 25 },
    );
  });
});

describe('the mirrored table', () => {
  function mirrored({ balls, stroke, kit, shape }: TableQuery): TableQuery {
    const { rightM_per_M, alongM_per_M } = kit.bedSlope;
    return {
      shape,
      balls: balls.map(({ xM, yM }) => ({ xM: -xM, yM })),
      stroke: { ...stroke, aimRad: -stroke.aimRad, side: -stroke.side },
      kit: { ...kit, bedSlope: { alongM_per_M, rightM_per_M: -rightM_per_M } },
    };
  }

  const touches = (events: readonly TableEvent[]) =>
    events.filter(({ kind }) => kind === 'hits-ball' || kind === 'hits-cushion').slice(0, 4);

  it.each([0, 0.002])('shows the mirrored stroke up to the fourth touch, slope %d', (slope) => {
    let compared = 0;
    fc.assert(
      fc.property(query(slope), (asked) => {
        const plain = touches(played(asked).events);
        const other = touches(played(mirrored(asked)).events);
        // Balls that touch from the start are hit in the order of their numbers, to rounding.
        plain.forEach(({ kind, ball, timeS, xM, yM }, at) => {
          if (timeS < 1e-9) return;
          compared++;
          expect(other[at]?.kind).toBe(kind);
          expect(other[at]?.ball).toBe(ball);
          expect(other[at]?.timeS).toBeCloseTo(timeS, 5);
          expect(other[at]?.xM).toBeCloseTo(-xM, 5);
          expect(other[at]?.yM).toBeCloseTo(yM, 5);
        });
      }),
      { numRuns: 150, seed: 26 },
    );
    expect(compared).toBeGreaterThan(300);
  });
});
