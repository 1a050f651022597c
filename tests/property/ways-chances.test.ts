import { beforeAll, describe, expect, it } from 'vitest';
import { WAY_KINDS } from '../../src/engine/goal/goal';
import { laidTable, playLaid } from '../../src/engine/goal/laid-table';
import type { ToldWay } from '../../src/engine/ways/refine-found';
import type { WaysQuestion } from '../../src/engine/ways/ways-question';
import { CAMPAIGN_TIMEOUT_MS, campaignSize, tell } from '../harness/campaign-size';
import { drawnByChance } from '../harness/drawn-by-chance';
import { type Random, seededRandom } from '../harness/seeded-random';
import { waysOf } from '../harness/ways-found';
import { randomPosition, waysQuestion } from '../harness/ways-positions';

const WAYS = campaignSize(4, 80);
const PLAYS = campaignSize(1500, 20_000);
/** Of each position so many, so that they come from many. */
const OF_A_POSITION = 5;

interface Counted {
  readonly way: ToldWay;
  readonly share: number;
}

/** Whether a stroke as it came out goes. */
function goes(
  { position, shape, kit, profile, spread }: WaysQuestion,
  way: ToldWay,
  random: Random,
) {
  const laid = laidTable(position, shape);
  const { stroke } = way.option;
  const meant = { ...stroke, aimRad: way.headingRad + stroke.aimRad };
  const drawn = drawnByChance(meant, kit, profile, spread, random);
  const play = playLaid(laid, drawn.stroke, drawn.kit, { endsOnly: true });
  const outcome = play?.balls[laid.names.indexOf(way.goal.ball)]?.outcome;
  return outcome?.kind === 'pocketed' && outcome.pocket === way.goal.pocket;
}

function countAll(): readonly Counted[] {
  const random = seededRandom(1701);
  const all: Counted[] = [];
  while (all.length < WAYS) {
    const question = waysQuestion(randomPosition(random, 4));
    const { ways } = waysOf(question, { most: OF_A_POSITION, keepsLow: false });
    for (const way of ways.slice(0, WAYS - all.length)) {
      let went = 0;
      for (let stroke = 0; stroke < PLAYS; stroke++) if (goes(question, way, random)) went++;
      const share = went / PLAYS;
      all.push({ way, share });
      tell(`${way.goal.kind} told ${way.chance.toFixed(3)} went ${share.toFixed(3)}`);
    }
  }
  return all;
}

const sampling = (share: number) => Math.sqrt((share * (1 - share)) / PLAYS);

describe(`the chance of ${WAYS} ways, each played ${PLAYS} times on the whole table`, () => {
  let all: readonly Counted[] = [];
  beforeAll(() => {
    all = countAll();
  }, CAMPAIGN_TIMEOUT_MS);

  it('is of all kinds', () => {
    const kinds = new Set(all.map(({ way }) => way.goal.kind));
    expect(WAY_KINDS.filter((kind) => kinds.has(kind)).length).toBeGreaterThanOrEqual(4);
  });

  it('is what the plays come to, within its error', () => {
    const off = all.map(({ way, share }) => way.chance - share);
    const mean = off.reduce((sum, one) => sum + one, 0) / off.length;
    tell(`chances: off by ${(100 * mean).toFixed(2)} points on average`);
    tell(`most ${(100 * Math.max(...off.map(Math.abs))).toFixed(1)} points`);
    expect(Math.abs(mean)).toBeLessThan(0.02);
    for (const { way, share } of all) {
      const error = Math.hypot(way.chanceError, sampling(share));
      expect(Math.abs(way.chance - share)).toBeLessThan(Math.min(0.07, 4 * error + 0.002));
    }
  });

  it('keeps the order of those more than three points apart', () => {
    const turned = all.flatMap((one) =>
      all.filter(
        (other) =>
          one.way.chance > other.way.chance + 0.03 && one.share < other.share - 2 * sampling(0.3),
      ),
    );
    expect(turned).toEqual([]);
  });
});
