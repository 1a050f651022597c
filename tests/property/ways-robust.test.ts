import { expect, it } from 'vitest';
import { UNMEASURED } from '../../src/engine/kit/kit-spread';
import { overTable } from '../../src/engine/ways/drawn-chance';
import { waysToRefine } from '../../src/engine/ways/pick-ways';
import { fanOfWay, refineFound } from '../../src/engine/ways/refine-found';
import { searchStretch } from '../../src/engine/ways/search-stretch';
import { waysStretches } from '../../src/engine/ways/stretches';
import type { WaysQuestion } from '../../src/engine/ways/ways-question';
import { tellLaid } from '../../src/engine/worth/laid-way';
import { CAMPAIGN_TIMEOUT_MS, campaignSize } from '../harness/campaign-size';
import { randomTableQuery } from '../harness/random-tables';
import { seededRandom } from '../harness/seeded-random';
import { waysQuestion } from '../harness/ways-positions';

const POSITIONS = campaignSize(6, 150);
const RULES = ['any', 'lowest', 'low', 'high', [1, 2]] as const;

/** The dotted names of all numbers of an answer that are none. */
function noNumbers(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, held]) => noNumbers(held, `${path}.${key}`));
}

/** Any table, any kit, balls in clusters and on rails, beds a little tilted now and then. */
function anyQuestion(random: () => number, count: number): WaysQuestion {
  const tilt = count % 5 === 0 ? 0.002 : 0;
  const { balls, kit, shape } = randomTableQuery(random, tilt, count % 3 === 0 ? 15 : 6);
  const position = balls.map((ball, at) => ({ ...ball, name: at === 0 ? ('cue' as const) : at }));
  const legal = RULES[count % RULES.length] ?? 'any';
  const spread = count % 2 === 0 ? UNMEASURED : waysQuestion([]).spread;
  return waysQuestion(position, { kit, shape, spread, legal });
}

it(
  `comes to an end, and to numbers, in ${POSITIONS} positions however the balls lie`,
  () => {
    const random = seededRandom(1704);
    let told = 0;
    for (let count = 0; count < POSITIONS; count++) {
      const question = anyQuestion(random, count);
      const parts = waysStretches(question).filter((_, at) => at % campaignSize(4, 1) === 0);
      const found = parts.flatMap((part) => searchStretch(question, part).ways);
      for (const way of waysToRefine(found, { most: 2, keepsLow: true })) {
        const worked = refineFound(question, way);
        told++;
        expect(noNumbers(worked)).toEqual([]);
        expect(fanOfWay(question, worked).length).toBeGreaterThan(0);
        // As laid elsewhere, with another kit: the cue points somewhere beside.
        const stroke = { ...overTable(way), aimRad: overTable(way).aimRad + 0.4 * random() };
        const laid = tellLaid(question, { goal: way.goal, stroke });
        expect(noNumbers(laid)).toEqual([]);
        if (laid) expect(fanOfWay(question, laid.told).length).toBeGreaterThan(0);
      }
    }
    expect(told).toBeGreaterThan(POSITIONS / 4);
  },
  CAMPAIGN_TIMEOUT_MS,
);
