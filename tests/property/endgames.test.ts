import { beforeAll, describe, expect, it } from 'vitest';
import { CAMPAIGN_TIMEOUT_MS, campaignSize, tell, WHOLE } from '../harness/campaign-size';
import { byEase, byGoes, byGoesThen, byWorth, type Chooser } from '../harness/choosers';
import { type Endgame, playEndgame } from '../harness/endgame';
import { seededRandom } from '../harness/seeded-random';
import { randomPosition } from '../harness/ways-positions';

/** Of each match so many racks; either player begins once on each. */
const PAIRS = campaignSize(1, 200);
const BALLS = campaignSize(2, 3);

const EASIEST = 'the easiest pot, or the nearest hit';
const OTHERS: Readonly<Record<string, Chooser>> = {
  goes: byGoes,
  'goes times then': byGoesThen,
  [EASIEST]: byEase,
};

/** A rack, played by both. */
interface Pair {
  /** Of the two games the share that who chooses by worth won; a game without an end is half. */
  readonly share: number;
  readonly games: readonly Endgame[];
}

const shareOf = ({ winner }: Endgame, me: 0 | 1) => (winner === null ? 0.5 : winner === me ? 1 : 0);

function match(other: Chooser): readonly Pair[] {
  const random = seededRandom(1801);
  return Array.from({ length: PAIRS }, (_, at): Pair => {
    const rack = randomPosition(random, BALLS);
    const first = playEndgame(rack, [byWorth, other], at + 1);
    const second = playEndgame(rack, [other, byWorth], at + 1);
    return { share: (shareOf(first, 0) + shareOf(second, 1)) / 2, games: [first, second] };
  });
}

const mean = (list: readonly number[]) => list.reduce((sum, one) => sum + one, 0) / list.length;

function told(pairs: readonly Pair[]): { share: number; error: number } {
  const shares = pairs.map(({ share }) => share);
  const share = mean(shares);
  const square = mean(shares.map((one) => (one - share) ** 2));
  return { share, error: Math.sqrt(square / shares.length) };
}

describe(`endgames of ${BALLS} balls, ${PAIRS} racks played by either of two club players`, () => {
  const matches = new Map<string, readonly Pair[]>();
  beforeAll(() => {
    for (const [name, other] of Object.entries(OTHERS)) matches.set(name, match(other));
  }, CAMPAIGN_TIMEOUT_MS);

  it('come to an end', () => {
    const games = [...matches.values()].flatMap((pairs) => pairs.flatMap((pair) => pair.games));
    expect(games).toHaveLength(6 * PAIRS);
    const ended = games.filter(({ winner }) => winner !== null);
    expect(ended.length).toBeGreaterThanOrEqual(0.9 * games.length - 1);
    for (const { choices } of games) expect(choices.length).toBeGreaterThanOrEqual(BALLS);
  });

  it('are told by what share who chooses by worth wins, and of ten bins of worth what was won', () => {
    for (const [name, pairs] of matches) {
      const { share, error } = told(pairs);
      tell(`by worth against ${name}: ${(100 * share).toFixed(1)} ± ${(100 * error).toFixed(1)} %`);
      // Of a sample the error is nothing to go by.
      if (WHOLE) expect(share + 3 * error, name).toBeGreaterThan(0.5);
    }
    const chosen = [...matches.values()].flatMap((pairs) =>
      pairs.flatMap(({ games }) =>
        games.flatMap((game) =>
          game.choices
            .filter(({ worth }) => !Number.isNaN(worth))
            .map(({ by, worth }) => ({ worth, won: shareOf(game, by) })),
        ),
      ),
    );
    for (let bin = 0; bin < 10; bin++) {
      const within = chosen.filter(({ worth }) => Math.min(9, Math.floor(10 * worth)) === bin);
      if (within.length === 0) continue;
      const [worth, won] = [within.map((one) => one.worth), within.map((one) => one.won)];
      tell(`worth ${mean(worth).toFixed(2)}: won ${mean(won).toFixed(2)} of ${within.length}`);
    }
    expect(chosen.length).toBeGreaterThan(0);
  });

  it('are the same played again', () => {
    const rack = randomPosition(seededRandom(1801), BALLS);
    const once = matches.get(EASIEST)?.[0]?.games[0];
    expect(once?.choices.length).toBeGreaterThanOrEqual(BALLS);
    expect(playEndgame(rack, [byWorth, byEase], 1)).toEqual(once);
  });
});
