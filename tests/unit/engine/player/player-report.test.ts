import { describe, expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { KIT_QUANTITIES, type KitSpread, UNMEASURED } from '../../../../src/engine/kit/kit-spread';
import { KIT_SHARE } from '../../../../src/engine/player/known-player';
import { levelTest } from '../../../../src/engine/player/level-test';
import { playerOf } from '../../../../src/engine/player/player-of';
import {
  type PlayedShot,
  type PlayerJob,
  playerReport,
} from '../../../../src/engine/player/player-report';
import { shotLine } from '../../../../src/engine/player/shot-line';
import { rangeOfChance } from '../../../../src/engine/player/some-players';
import { chanceOf } from '../../../../src/engine/room/chance';
import { WPA_POCKETS } from '../../../../src/engine/table/pocket-standard';
import { tableShape } from '../../../../src/engine/table/table-shape';
import { hiddenStroke, ordinaryShot } from '../../../harness/hidden-stroke';
import { seededRandom } from '../../../harness/seeded-random';

/** Shots of one hidden player, as the app would keep them. */
function playedBy(seed: number, count: number): readonly PlayedShot[] {
  const random = seededRandom(seed);
  const player = hiddenStroke(seed);
  const shots: PlayedShot[] = [];
  while (shots.length < count) {
    const asked = ordinaryShot(random);
    const line = shotLine(asked);
    if (line === null) continue;
    const { told } = player.play(asked, line);
    shots.push({ ...asked, aimRad: line.solvedRad, result: told, counts: true });
  }
  return shots;
}

const shots = playedBy(21, 60);
const job: PlayerJob = { madeOf10: 6, kit: DEFAULT_KIT, spread: UNMEASURED, shots };
const report = playerReport(job);
const { known } = report;
if (known === null) throw new Error('nothing is known');

describe('what a log of shots tells', () => {
  it('is plain data, and the same from lines that were kept', () => {
    expect(structuredClone(report)).toEqual(report);
    expect(JSON.stringify(JSON.parse(JSON.stringify(report)))).toBe(JSON.stringify(report));
    const { lines, question } = report;
    const kept = shots.map((shot, index) => ({ ...shot, line: lines[index] ?? null }));
    expect(playerReport({ ...job, question, shots: kept })).toEqual(report);
    expect(known.shots).toBe(60);
  });

  it('names what cannot be learnt from, and learns from the rest as if it were not there', () => {
    const [first] = shots;
    if (first === undefined) throw new Error('there are no shots');
    const slow = { ...first, shot: { ...first.shot, speedMps: 0.1 } };
    const odd: readonly PlayedShot[] = [
      { ...first, counts: false },
      slow,
      { ...first, shot: { ...first.shot, cutRad: 0 }, result: 'thin' },
    ];
    const { notLearnt, known: same } = playerReport({ ...job, shots: [...odd, ...shots] });
    expect(notLearnt.slice(0, 4)).toEqual(['left-out', 'no-aim', 'no-such-result', null]);
    expect(same).toEqual(known);
  });

  it('takes left and right of the target for thin and full', () => {
    const [cut] = shots.filter(({ shot }) => shot.cutRad > 0.2);
    if (cut === undefined) throw new Error('there is no cut to the right');
    const told = (result: PlayedShot['result']) =>
      playerReport({ ...job, shots: Array.from({ length: 6 }, () => ({ ...cut, result })) }).known;
    // Cut to the right, a ball that is hit too thin passes right of its target.
    expect(told('right')).toEqual(told('thin'));
    expect(told('left')).toEqual(told('full'));
    expect(told('left')?.bias.fullRad.value).toBeGreaterThan(0);
  });

  it('is nothing on a kit with which the question has no answer', () => {
    const stuck = { ...DEFAULT_KIT, rollFriction: 0.1 };
    expect(playerReport({ ...job, kit: stuck, shots: [] }).known).toBeNull();
  });
});

describe('the one player who stands for all that may be the one', () => {
  const asChance = Object.fromEntries(
    KIT_QUANTITIES.map((name) => [name, name === 'massRatio' ? 0 : KIT_SHARE * UNMEASURED[name]]),
  ) as KitSpread;

  it('makes ordinary shots as often as they do in the mean, and lies among them', () => {
    const random = seededRandom(5);
    const off: number[] = [];
    while (off.length < 5) {
      const asked = ordinaryShot(random);
      const line = shotLine(asked);
      if (line === null) continue;
      const { task, kit, stroke } = line;
      const share = chanceOf(task, kit, stroke, known.profile, known.spread).share;
      const each = known.some
        .filter((_, index) => index % 4 === 0)
        .map((unknowns) => {
          const {
            aimBiasRad,
            fullBiasRad,
            speedBias,
            squirtSds,
            stroke: scatter,
          } = playerOf(unknowns);
          const steady = {
            aimRad: aimBiasRad,
            fullRad: fullBiasRad,
            speedShare: speedBias,
            massRatioTimes: Math.exp(UNMEASURED.massRatio * squirtSds),
          };
          return chanceOf(task, kit, stroke, { ...scatter, steady }, asChance).share;
        });
      off.push(share - each.reduce((sum, one) => sum + one, 0) / each.length);
      const range = rangeOfChance({ some: known.some, asked, share });
      expect(range?.low).toBeLessThan(share);
      expect(range?.high).toBeGreaterThan(share);
    }
    // So few players are a sample: their mean is itself uncertain by a point or two.
    const meanSquare = off.reduce((sum, one) => sum + one * one, 0) / off.length;
    expect(Math.sqrt(meanSquare)).toBeLessThan(0.035);
    expect(Math.abs(off.reduce((sum, one) => sum + one, 0) / off.length)).toBeLessThan(0.025);
  });
});

describe('the shots of the level test', () => {
  const shape = tableShape(2.54, 1.27, WPA_POCKETS);
  const level = levelTest({ shape, kit: DEFAULT_KIT, spread: UNMEASURED });

  it('lie where diamonds cross, straight and cut either way, easy and hard', () => {
    expect(level.length).toBeGreaterThan(30);
    for (const { position } of level) {
      for (const { xM, yM } of position) {
        for (const place of [(xM / 1.27) * 4, (yM / 2.54) * 8]) {
          expect(Math.abs(place - Math.round(place))).toBeLessThan(1e-9);
        }
      }
    }
    const cuts = level.map(({ shot }) => shot.cutRad);
    expect(cuts.filter((cutRad) => cutRad === 0).length).toBeGreaterThan(3);
    // Each has its mirror image at the other pocket.
    const sum = cuts.reduce((total, cutRad) => total + cutRad, 0);
    expect(Math.abs(sum)).toBeLessThan(0.01);
    const halves = level.map(({ line }) => line.edges[2] - line.edges[1]);
    expect(Math.max(...halves) / Math.min(...halves)).toBeGreaterThan(6);
  });

  it('are chosen by what they tell: harder after shots that went, easier after misses', () => {
    const roomOfNext = (passed: readonly (0 | 1 | null)[]) => {
      const played: PlayedShot[] = [];
      const next = () => {
        const asked = { ...job, madeOf10: null, shots: played, question: report.question };
        const shot = level[playerReport({ ...asked, candidates: level }).next ?? -1];
        if (shot === undefined) throw new Error('no shot tells anything');
        return shot;
      };
      for (const side of passed) {
        const shot = next();
        const result = side === null ? 'went' : shot.line.passes[side];
        played.push({ ...shot, aimRad: null, result, counts: true });
      }
      const { edges } = next().line;
      return edges[2] - edges[1];
    };
    const first = roomOfNext([]);
    expect(roomOfNext([null, null, null, null])).toBeLessThan(first);
    expect(roomOfNext([0, 1])).toBeGreaterThan(first);
  });
});
