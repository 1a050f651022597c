import { expect, it } from 'vitest';
import { solveAim } from '../../src/engine/direct/solve-aim';
import { CAMPAIGN_TIMEOUT_MS, campaignSize } from '../harness/campaign-size';
import { type Query, randomQuery } from '../harness/random-shots';
import { scanForAim } from '../harness/scan-for-aim';
import { seededRandom } from '../harness/seeded-random';

/** The first so many random shots that the engine refuses. */
function refused(count: number, seed: number, slopeM_per_M: number): Query[] {
  const random = seededRandom(seed);
  const queries: Query[] = [];
  while (queries.length < count) {
    const query = randomQuery(random, slopeM_per_M);
    if (!solveAim(query.shot, query.kit).ok) queries.push(query);
  }
  return queries;
}

it.each([
  [campaignSize(16, 2000), 0],
  [campaignSize(6, 500), 0.002],
])(
  'no scan of 12,000 aims finds one for %d refused shots, slope %d',
  (count, slope) => {
    const queries = refused(count, 12, slope);
    const overlooked = queries.filter((query) => scanForAim(query, 60, 0.01) !== null);
    expect(queries).toHaveLength(count);
    expect(overlooked).toEqual([]);
  },
  CAMPAIGN_TIMEOUT_MS,
);
