import { beforeAll, describe, expect, it } from 'vitest';
import { laidTable, playLaid } from '../../src/engine/goal/laid-table';
import { doesGo, overTable } from '../../src/engine/ways/drawn-chance';
import { searchStretch } from '../../src/engine/ways/search-stretch';
import { waysStretches } from '../../src/engine/ways/stretches';
import { askedFor, type WaysQuestion } from '../../src/engine/ways/ways-question';
import { StrokeJudge } from '../../src/engine/worth/stroke-worth';
import { type Worth, type WorthWay, worthOf } from '../../src/engine/worth/worth';
import { CAMPAIGN_TIMEOUT_MS, campaignSize, tell } from '../harness/campaign-size';
import { drawnByChance } from '../harness/drawn-by-chance';
import { type Random, seededRandom } from '../harness/seeded-random';
import { randomPosition, waysQuestion } from '../harness/ways-positions';

const WAYS = campaignSize(3, 40);
const PLAYS = campaignSize(800, 20_000);
const OF_A_POSITION = 2;

/** Shares and means of plays, with their standard deviations and how many they are of. */
interface Figure {
  readonly mean: number;
  readonly sd: number;
  readonly count: number;
}

interface Counted {
  readonly told: Worth;
  readonly worth: Figure;
  readonly after: Figure;
  readonly theirBest: Figure;
  readonly foul: Figure;
}

function figureOf(values: readonly number[]): Figure {
  const count = values.length;
  const mean = values.reduce((sum, one) => sum + one, 0) / Math.max(1, count);
  const square = values.reduce((sum, one) => sum + (one - mean) ** 2, 0) / Math.max(1, count);
  return { mean, sd: Math.sqrt(square), count };
}

/** What strokes drawn at random come to. */
function counted(question: WaysQuestion, way: WorthWay, random: Random): Counted {
  const { position, shape, kit, profile, spread } = question;
  const { goal } = way;
  const laid = laidTable(position, shape);
  const { first } = askedFor(question);
  const judge = new StrokeJudge(question);
  const values: number[] = [];
  const after: number[] = [];
  const theirs: number[] = [];
  const fouls: number[] = [];
  for (let stroke = 0; stroke < PLAYS; stroke++) {
    const drawn = drawnByChance(overTable(way), kit, profile, spread, random);
    const play = playLaid(laid, drawn.stroke, drawn.kit, { endsOnly: true });
    const judged = judge.judge(play);
    values.push(judged.value);
    const goes = play !== null && goal.kind !== 'safety' && doesGo({ laid, first }, { goal }, play);
    if (judged.theirs !== null) {
      theirs.push(judged.theirs.best);
      fouls.push(judged.theirs.isFoul ? 1 : 0);
    } else if (goes && !judged.hasWon) after.push(judged.next?.chance ?? 0);
  }
  return {
    told: worthOf(question, way),
    worth: figureOf(values),
    after: figureOf(after),
    theirBest: figureOf(theirs),
    foul: figureOf(fouls),
  };
}

function countAll(): readonly Counted[] {
  const random = seededRandom(1803);
  const all: Counted[] = [];
  while (all.length < WAYS) {
    const question = waysQuestion(randomPosition(random, 3), {
      legal: 'lowest',
      kinds: ['direct', 'bank'],
    });
    const found = waysStretches(question).flatMap((part) => searchStretch(question, part).ways);
    const likely = found.filter(({ rough }) => rough > 0.1);
    for (const way of likely.slice(0, Math.min(OF_A_POSITION, WAYS - all.length))) {
      all.push(counted(question, way, random));
    }
  }
  return all;
}

/** Standard error of the difference of a told mean of so many draws and a played one. */
const errorOf = ({ sd, count }: Figure, draws: number) =>
  sd * Math.sqrt(1 / Math.max(1, draws) + 1 / Math.max(1, count));

describe(`the parts of ${WAYS} ways, each played ${PLAYS} times on the whole table`, () => {
  const DRAWS = 512;
  let all: readonly Counted[] = [];
  beforeAll(() => {
    all = countAll();
  }, CAMPAIGN_TIMEOUT_MS);

  it('are what the plays come to, within their errors', () => {
    const excesses: number[] = [];
    for (const { told, worth, after, theirBest, foul } of all) {
      const compare = (name: string, value: number, played: Figure, draws: number) => {
        const error = errorOf(played, draws) + 0.004;
        tell(`${name} told ${value.toFixed(3)} played ${played.mean.toFixed(3)}`);
        excesses.push((value - played.mean) / error);
        expect(Math.abs(value - played.mean), name).toBeLessThan(4 * error);
      };
      compare('worth', told.worth, worth, DRAWS);
      if (told.after !== null && after.count > 0) {
        compare('after', told.after.chance, after, told.goes * DRAWS);
      }
      if (told.miss !== null && theirBest.count > 0) {
        compare('theirBest', told.miss.theirBest, theirBest, told.miss.share * DRAWS);
        compare('foul', told.miss.foul, foul, told.miss.share * DRAWS);
      }
    }
    const rms = Math.sqrt(excesses.reduce((sum, one) => sum + one * one, 0) / excesses.length);
    tell(`parts: ${rms.toFixed(2)} of their errors, root mean square`);
    expect(excesses.length).toBeGreaterThanOrEqual(2 * WAYS);
    expect(rms).toBeLessThan(1.5);
  });
});
