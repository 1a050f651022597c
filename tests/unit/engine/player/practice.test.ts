import { describe, expect, it } from 'vitest';
import { goes, type MissOrLost, missAt } from '../../../../src/engine/goal/task';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { KIT_QUANTITIES, type KitSpread, UNMEASURED } from '../../../../src/engine/kit/kit-spread';
import { RAD_PER_DEG } from '../../../../src/engine/numerics/angle';
import { drillShots, nearestRung } from '../../../../src/engine/player/drill-shots';
import type { SpeedWindow } from '../../../../src/engine/player/known-player';
import { type Limits, whatLimits } from '../../../../src/engine/player/limits';
import { type LimitShot, ordinaryShots } from '../../../../src/engine/player/ordinary-shots';
import {
  type KnownPlayer,
  type PlayedShot,
  playerReport,
} from '../../../../src/engine/player/player-report';
import { strokeByRule } from '../../../../src/engine/player/player-rule';
import { shotLine } from '../../../../src/engine/player/shot-line';
import { speedShots } from '../../../../src/engine/player/speed-shots';
import { chanceAt, levelAfter, stepAfter } from '../../../../src/engine/player/staircase';
import { drawnStroke, turnedBy } from '../../../../src/engine/room/drawn-stroke';
import type { StrokeProfile } from '../../../../src/engine/room/stroke-profile';
import { WPA_POCKETS } from '../../../../src/engine/table/pocket-standard';
import { tableShape } from '../../../../src/engine/table/table-shape';
import { normalDraw } from '../../../harness/normal-draw';
import { type Random, seededRandom } from '../../../harness/seeded-random';

const TABLE = {
  shape: tableShape(2.54, 1.27, WPA_POCKETS),
  kit: DEFAULT_KIT,
  spread: UNMEASURED,
};
const KNOWN_KIT = Object.fromEntries(KIT_QUANTITIES.map((name) => [name, 0])) as KitSpread;

/** What stands for an evening: ordinary shots, and on half of these the cue ball was to stop on a spot. */
const SHOTS: readonly LimitShot[] = [...ordinaryShots(TABLE), ...speedShots(TABLE, [1.5])];

/** What became of a stroke as it is written down. */
function resultOf(miss: MissOrLost): PlayedShot['result'] {
  if (typeof miss === 'string') return miss === 'short' ? miss : 'untouched';
  if (goes(miss)) return 'went';
  return miss > 0 ? 'right' : 'left';
}

function stoppedAt(speedMps: number, meantMps: number, { low, high }: SpeedWindow) {
  const off = Math.log(speedMps / meantMps);
  if (off < low) return 'short';
  return off > high ? 'long' : 'in';
}

/** A log of a player whose stroke is planted: every stroke drawn, and played on the engine. */
function logOf(stroke: StrokeProfile, seed: number, rounds: number): readonly PlayedShot[] {
  const random = seededRandom(seed);
  return Array.from({ length: rounds }, () => SHOTS).flatMap((all) =>
    all.flatMap(({ rest, ...asked }): PlayedShot[] => {
      const line = shotLine(asked);
      if (line === null) return [];
      const normals = Array.from({ length: 4 }, () => normalDraw(random));
      const drawn = drawnStroke(DEFAULT_KIT, line.stroke, stroke, (at) => normals[at] ?? 0);
      const played = turnedBy(DEFAULT_KIT, drawn, stroke, normalDraw(random));
      const result = resultOf(missAt(line.task, DEFAULT_KIT, played));
      const shot = { ...asked, aimRad: line.solvedRad, result, counts: true };
      if (rest === null) return [shot];
      const stopped = stoppedAt(played.speedMps, asked.shot.speedMps, rest);
      return [{ ...shot, rest: { low: rest.low, high: rest.high, stopped } }];
    }),
  );
}

function knownFrom(shots: readonly PlayedShot[]): KnownPlayer {
  const job = { madeOf10: null, kit: DEFAULT_KIT, spread: UNMEASURED, shots };
  const { known } = playerReport(job);
  if (known === null) throw new Error('nothing is known');
  return known;
}

function limitsOf(stroke: StrokeProfile, seed: number): Limits {
  const { profile, spread } = knownFrom(logOf(stroke, seed, 2));
  const own = SHOTS.map((asked) => ({ ...asked, spread }));
  const limits = whatLimits({ own, profile, table: TABLE });
  if (limits === null) throw new Error('no shot goes');
  return limits;
}

describe('what limits a player', () => {
  it('tells a wide line from a wide speed, each from a log of its own', () => {
    const steady = strokeByRule(0.1 * RAD_PER_DEG);
    const wide = strokeByRule(0.5 * RAD_PER_DEG);
    const line = limitsOf({ ...wide, speedShare: steady.speedShare }, 3);
    const speed = limitsOf({ ...steady, speedShare: 0.2 }, 4);
    expect([line.isOwn, speed.isOwn]).toEqual([true, true]);
    expect(line.gains.line).toBeGreaterThan(1.5 * line.gains.speed);
    expect(speed.gains.speed).toBeGreaterThan(speed.gains.line);
  });

  it('goes by ordinary shots until ten are logged, and is never a kit of which all is known', () => {
    const profile = strokeByRule(0.2 * RAD_PER_DEG);
    const few = SHOTS.slice(0, 9);
    const unmeasured = whatLimits({ own: few, profile, table: TABLE });
    const measured = whatLimits({ own: [], profile, table: { ...TABLE, spread: KNOWN_KIT } });
    expect(unmeasured).toMatchObject({ isOwn: false, shots: 10 });
    expect(unmeasured?.gains.kit).toBeGreaterThan(0.01);
    expect(measured?.gains.kit).toBe(0);
    expect(measured?.gains.line).toBeGreaterThan(0.05);
  });

  it('is nothing where no shot goes', () => {
    const own = SHOTS.slice(0, 10).map((asked) => {
      return { ...asked, shot: { ...asked.shot, speedMps: 0.1 } };
    });
    expect(whatLimits({ own, profile: strokeByRule(0.002), table: TABLE })).toBeNull();
  });
});

describe('the ladder’s rule', () => {
  it('is a step harder after five of five, easier after three misses, and else as hard', () => {
    expect(stepAfter(5, 0)).toBe(1);
    expect([stepAfter(4, 1), stepAfter(3, 2)]).toEqual([0, 0]);
    expect([stepAfter(0, 3), stepAfter(2, 3)]).toEqual([-1, -1]);
    expect([stepAfter(0, 0), stepAfter(4, 0), stepAfter(2, 2)]).toEqual([null, null, null]);
    expect(chanceAt(0)).toBeCloseTo(0.7, 12);
    expect(chanceAt(1)).toBeLessThan(0.63);
    expect(chanceAt(levelAfter(99, 1))).toBeGreaterThan(0.1);
    expect(chanceAt(levelAfter(-99, -1))).toBeLessThan(0.97);
  });

  it('settles where about seven in ten go, of a player far from what was told', () => {
    // Common practice, no source: an up-down method is tried on a listener whose odds are known.
    const random = seededRandom(11);
    for (const better of [-1.5, 0, 1.5]) {
      let level = 0;
      const sets = Array.from({ length: 2000 }, () => {
        const odds = chanceAt(level) / (1 - chanceAt(level));
        const set = playSet(random, 1 / (1 + Math.exp(-better) / odds));
        level = levelAfter(level, set.step);
        return set;
      }).slice(20);
      const all = sets.reduce((sum, { went, missed }) => sum + went + missed, 0);
      const share = sets.reduce((sum, { went }) => sum + went, 0) / all;
      expect(Math.abs(share - 0.7)).toBeLessThan(0.03);
    }
  });
});

/** A set by somebody who makes so large a share. */
function playSet(random: Random, share: number) {
  let [went, missed] = [0, 0];
  for (;;) {
    const step = stepAfter(went, missed);
    if (step !== null) return { went, missed, step };
    if (random() < share) went += 1;
    else missed += 1;
  }
}

describe('drills', () => {
  const known = knownFrom([]);
  const line = drillShots('line', TABLE);
  const speed = drillShots('speed', TABLE);
  const side = drillShots('side', TABLE);

  it('have a shot of about seven in ten for players of every level, in every theme', () => {
    for (const [madeOf10, shots] of [2, 7].flatMap((of10) =>
      [line, speed, side].map((all) => [of10, all] as const),
    )) {
      const { known: one } = playerReport({
        madeOf10,
        kit: DEFAULT_KIT,
        spread: UNMEASURED,
        shots: [],
      });
      const rung = nearestRung({ some: one?.some ?? [], shots, chance: 0.7, not: [] });
      expect(Math.abs((rung?.chance ?? 0) - 0.7)).toBeLessThan(0.12);
    }
  });

  it('lie where diamonds cross, and the cue ball is to rest where they do', () => {
    expect(speed.length).toBeGreaterThan(20);
    for (const { position, rest, shot } of speed) {
      const [cueBall, ball] = position;
      if (!cueBall || !ball || !rest) throw new Error('something is missing');
      for (const [x, y] of [cueBall, ball, rest].map(({ xM, yM }) => [xM / 0.3175, yM / 0.3175])) {
        expect(Math.abs((x ?? 0) - Math.round(x ?? 0))).toBeLessThan(1e-9);
        expect(Math.abs((y ?? 0) - Math.round(y ?? 0))).toBeLessThan(1e-9);
      }
      // So little a cut is told as none.
      expect(Math.abs(shot.cutRad)).toBeLessThan(2 * RAD_PER_DEG);
      expect(rest.low).toBeLessThan(0);
      expect(rest.high).toBeGreaterThan(0);
    }
    expect(side.every(({ shot }) => Math.abs(shot.side) === 0.33)).toBe(true);
  });

  it('take another lie than those just played, while there is one', () => {
    const first = nearestRung({ some: known.some, shots: line, chance: 0.7, not: [] });
    const other = nearestRung({
      some: known.some,
      shots: line,
      chance: 0.7,
      not: [first?.at ?? -1],
    });
    expect(other?.at).not.toBe(first?.at);
    const [only] = line;
    if (only === undefined) throw new Error('there are no drills');
    expect(nearestRung({ some: known.some, shots: [only], chance: 0.7, not: [0] })?.at).toBe(0);
    expect(nearestRung({ some: known.some, shots: [], chance: 0.7, not: [] })).toBeNull();
  });

  it('teach how the speed scatters by where the cue ball stops', () => {
    const { rest, shot, ...laid } = speed[3] ?? {};
    if (!rest || !shot) throw new Error('there is no such drill');
    const seen = (stops: readonly ('in' | 'short' | 'long')[]) =>
      knownFrom(
        Array.from({ length: 4 }, () => stops)
          .flat()
          .map((stopped) => ({
            ...(laid as (typeof line)[number]),
            shot,
            aimRad: null,
            result: 'went' as const,
            counts: true,
            rest: { low: rest.low, high: rest.high, stopped },
          })),
      );
    const even = seen(['in', 'in', 'in', 'in', 'in']);
    const wide = seen(['short', 'long', 'in', 'short', 'long']);
    const hard = seen(['long', 'long', 'long', 'in', 'long']);
    expect(wide.profile.speedShare).toBeGreaterThan(1.5 * even.profile.speedShare);
    expect(hard.bias.speedShare.low).toBeGreaterThan(0);
  });
});
