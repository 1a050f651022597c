import { beforeAll, describe, expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../src/engine/kit/kit';
import { UNMEASURED } from '../../src/engine/kit/kit-spread';
import { type LoggedShot, learn, type PlayerKnowledge } from '../../src/engine/player/learn';
import { type ShotLine, shotLine } from '../../src/engine/player/shot-line';
import { mostTelling } from '../../src/engine/player/telling-shot';
import { testShots } from '../../src/engine/player/test-shots';
import { questionShot } from '../../src/engine/player/the-question';
import { knownBias, knownChance, knownStroke } from '../../src/engine/player/what-is-known';
import { CAMPAIGN_TIMEOUT_MS, campaignSize, tell } from '../harness/campaign-size';
import { type HiddenStroke, hiddenStroke, logged, ordinaryShot } from '../harness/hidden-stroke';
import { quantile } from '../harness/quantile';
import { type Random, seededRandom } from '../harness/seeded-random';

const PLAYERS = campaignSize(4, 200);
const TEST_SHOTS = 15;
const ORDINARY_SHOTS = campaignSize(30, 60);
const HELD_OUT = campaignSize(3, 100);
/** A few players scatter by more than all of them. */
const SLACK = campaignSize(3, 1);
const DEG = 180 / Math.PI;

/** What came of learning one player, twice over: by test shots, and by ordinary ones. */
interface Learnt {
  readonly player: HiddenStroke;
  readonly tested: PlayerKnowledge;
  readonly played: PlayerKnowledge;
  readonly heldOut: readonly HeldOut[];
}

interface HeldOut {
  readonly went: boolean;
  /** By who has seen the test shots, the ordinary ones, and all there is to know. */
  readonly tested: number;
  readonly played: number;
  readonly known: number;
}

const QUESTION = shotLine(questionShot(DEFAULT_KIT, UNMEASURED));
if (QUESTION === null) throw new Error('the question has no line');

function lineOf(random: Random): { asked: ReturnType<typeof ordinaryShot>; line: ShotLine } {
  for (;;) {
    const asked = ordinaryShot(random);
    const line = shotLine(asked);
    if (line !== null) return { asked, line };
  }
}

function testedOn(player: HiddenStroke): PlayerKnowledge {
  const candidates = testShots(DEFAULT_KIT, UNMEASURED);
  const shots: LoggedShot[] = [];
  let known = learn({ made: null, shots });
  for (let shot = 0; shot < TEST_SHOTS; shot++) {
    const next = mostTelling(known, candidates);
    if (next === null) throw new Error('no shot tells anything');
    shots.push(logged(next.line, player.play(next, next.line).told));
    known = learn({ made: null, shots });
  }
  return known;
}

function learnt(seed: number): Learnt {
  const player = hiddenStroke(seed);
  const random = seededRandom(seed + 100_000);
  const shots = Array.from({ length: ORDINARY_SHOTS }, () => {
    const { asked, line } = lineOf(random);
    return logged(line, player.play(asked, line).told);
  });
  const [tested, played] = [testedOn(player), learn({ made: null, shots })];
  const heldOut = Array.from({ length: HELD_OUT }, () => {
    const { asked, line } = lineOf(random);
    return {
      went: player.play(asked, line).truly === 'went',
      tested: knownChance(tested, line).value,
      played: knownChance(played, line).value,
      known: player.chanceOf(line),
    };
  });
  return { player, tested, played, heldOut };
}

let all: readonly Learnt[] = [];
beforeAll(() => {
  all = Array.from({ length: PLAYERS }, (_, index) => learnt(300 + index));
}, CAMPAIGN_TIMEOUT_MS);

describe.each([
  ['tested', TEST_SHOTS, 0.3, 0.3],
  ['played', ORDINARY_SHOTS, 0.22, 0.15],
] as const)('a player who was %s, over %i shots', (how, _, within, median) => {
  const figures = () =>
    all.map((one) => ({ ...one, line: knownStroke(one[how], QUESTION).lineRad }));

  it('is known by the scatter of the line, two in three times this near', () => {
    const errors = figures().map(({ line, player }) => Math.abs(line.value / player.lineRad - 1));
    tell(`${how}: line off by ${quantile(errors, 0.5)} median, ${quantile(errors, 2 / 3)} at 2/3`);
    expect(quantile(errors, 2 / 3)).toBeLessThan(within * SLACK);
    expect(quantile(errors, 0.5)).toBeLessThan(median * SLACK);
  });

  it('has a line within what is told of it nine times in ten', () => {
    const inside = figures().filter(
      ({ line, player }) => line.low <= player.lineRad && player.lineRad <= line.high,
    ).length;
    tell(`${how}: ${(100 * inside) / PLAYERS} % of 90 % intervals hold the line`);
    expect(inside / PLAYERS).toBeGreaterThan(campaignSize(0.4, 0.83));
    expect(inside / PLAYERS).toBeLessThan(campaignSize(1.01, 0.96));
  });

  it('makes the question’s shot as often as is told, within six points', () => {
    const errors = all.map(({ player, [how]: known }) =>
      Math.abs(knownChance(known, QUESTION).value - player.chanceOf(QUESTION)),
    );
    tell(`${how}: chance of the question's shot off by ${quantile(errors, 0.5)} (median)`);
    expect(quantile(errors, 0.5)).toBeLessThan(0.06 * SLACK);
  });

  it('has a marked bias told to its right side', () => {
    const marked = all.filter(({ player }) => Math.abs(player.aimBiasRad) * DEG > 0.15);
    const right = marked.filter(
      ({ player, [how]: known }) => knownBias(known).aimRad.value * player.aimBiasRad > 0,
    ).length;
    tell(`${how}: ${right} of ${marked.length} biases above 0.15 degrees on their side`);
    expect(right / Math.max(1, marked.length)).toBeGreaterThan(
      marked.length === 0 ? -1 : campaignSize(0.4, how === 'tested' ? 0.9 : 0.95),
    );
  });

  it('is forecast on other shots nearly as well as by who knows all', () => {
    const shots = all.flatMap(({ heldOut }) => heldOut);
    const brier = (of: (one: HeldOut) => number) =>
      shots.reduce((sum, one) => sum + (of(one) - Number(one.went)) ** 2, 0) / shots.length;
    const ratio = brier((one) => one[how]) / brier(({ known }) => known);
    tell(`${how}: Brier score over that of who knows all: ${ratio} (${shots.length} shots)`);
    expect(ratio).toBeLessThan(campaignSize(2.5, how === 'tested' ? 1.25 : 1.08));
  });

  it('makes of shots that are given a chance that share, in ten bins', () => {
    const shots = all.flatMap(({ heldOut }) => heldOut);
    const bins = Array.from({ length: 10 }, (_unused, bin) =>
      shots.filter((one) => Math.min(9, Math.floor(10 * one[how])) === bin),
    ).filter(({ length }) => length >= campaignSize(1, 1000));
    const off = bins.map(
      (bin) =>
        bin.reduce((sum, one) => sum + one[how] - Number(one.went), 0) / Math.max(1, bin.length),
    );
    tell(`${how}: off by bins ${off.map((share) => share.toFixed(3)).join(' ')}`);
    expect(Math.max(...off.map(Math.abs))).toBeLessThan(campaignSize(1.01, 0.06));
  });
});
