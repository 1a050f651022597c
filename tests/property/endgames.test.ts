import { beforeAll, describe, expect, it } from 'vitest';
import { CAMPAIGN_TIMEOUT_MS, campaignSize, tell, WHOLE } from '../harness/campaign-size';
import { byEase, byWorth } from '../harness/choosers';
import { playEndgame } from '../harness/endgame';
import {
  endgameMatches,
  OTHER_NAMES,
  type OtherName,
  type Pair,
  shareOf,
} from '../harness/endgame-matches';
import { seededRandom } from '../harness/seeded-random';
import { randomPosition } from '../harness/ways-positions';

/** Each rack is begun once by either player. */
const RACKS = campaignSize(1, 400);
const BALLS = campaignSize(2, 3);
/** No rule of worth was chosen by these. */
const SEED = 1801;
/** A worth is a share of games that so many balls end. */
const TOLD_BALLS = 2;

const mean = (list: readonly number[]) => list.reduce((sum, one) => sum + one, 0) / list.length;

/** Standard error by racks, for the two games of one have much in common. */
function told(pairs: readonly Pair[]): { share: number; error: number } {
  const shares = pairs.map(({ share }) => share);
  const share = mean(shares);
  const square = mean(shares.map((one) => (one - share) ** 2));
  return { share, error: Math.sqrt(square / shares.length) };
}

/** What was told to be worth so much, beside what was won. */
function chosenIn(pairs: readonly Pair[]) {
  return pairs.flatMap(({ games }) =>
    games.flatMap((game) =>
      game.choices
        .filter(({ worth }) => !Number.isNaN(worth))
        .map(({ by, worth, balls }) => ({ worth, balls, won: shareOf(game, by) })),
    ),
  );
}

function tellBins(name: string, chosen: ReturnType<typeof chosenIn>): void {
  for (let bin = 0; bin < 10; bin++) {
    const within = chosen.filter(({ worth }) => Math.min(9, Math.floor(10 * worth)) === bin);
    if (within.length === 0) continue;
    const [worth, won] = [within.map((one) => one.worth), within.map((one) => one.won)];
    tell(
      `${name}, worth ${mean(worth).toFixed(2)}: won ${mean(won).toFixed(2)} of ${within.length}`,
    );
  }
}

describe(`endgames of ${BALLS} balls, ${RACKS} racks played by either of two club players`, () => {
  let all: readonly Pair[] = [];
  const against = (name: OtherName) => all.filter(({ other }) => other === name);
  beforeAll(() => {
    all = [...endgameMatches(RACKS, BALLS, SEED)].flat();
  }, CAMPAIGN_TIMEOUT_MS);

  it('come to an end', () => {
    const games = all.flatMap((pair) => pair.games);
    expect(games).toHaveLength(2 * OTHER_NAMES.length * RACKS);
    const ended = games.filter(({ winner }) => winner !== null);
    tell(`${ended.length} of ${games.length} games ended`);
    expect(ended.length).toBeGreaterThanOrEqual(0.9 * games.length - 1);
    for (const { choices } of games) expect(choices.length).toBeGreaterThanOrEqual(BALLS);
  });

  it('are told by what share who chooses by worth wins', () => {
    for (const name of OTHER_NAMES) {
      const { share, error } = told(against(name));
      tell(`by worth against ${name}: ${(100 * share).toFixed(1)} ± ${(100 * error).toFixed(1)} %`);
      expect(against(name)).toHaveLength(RACKS);
      // Of a sample the error is nothing to go by.
      if (WHOLE) expect(share + 3 * error, name).toBeGreaterThan(0.5);
    }
    // What the rule of worth took the place of.
    const { share, error } = told(against('plainer worth'));
    if (WHOLE) expect(share - 2 * error).toBeGreaterThan(0.5);
  });

  it('are told by what was won of ten bins of worth', () => {
    const chosen = chosenIn(all);
    tellBins(
      'two balls or one',
      chosen.filter(({ balls }) => balls <= TOLD_BALLS),
    );
    tellBins(
      'more balls',
      chosen.filter(({ balls }) => balls > TOLD_BALLS),
    );
    expect(chosen.length).toBeGreaterThan(0);
  });

  it('are the same played again', () => {
    const rack = randomPosition(seededRandom(SEED), BALLS);
    const once = all.find(({ other }) => other === 'the easiest pot, or the nearest hit')?.games[0];
    expect(once?.choices.length).toBeGreaterThanOrEqual(BALLS);
    expect(playEndgame(rack, [byWorth, byEase], 1)).toEqual(once);
  });
});
