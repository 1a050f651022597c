import { describe, expect, it } from 'vitest';
import type { RefusalReason, Shot } from '../../src/engine/direct/shot';
import { solveAim } from '../../src/engine/direct/solve-aim';
import { CAMPAIGN_TIMEOUT_MS, campaignSize } from '../harness/campaign-size';
import { type Query, randomQuery } from '../harness/random-shots';
import { scanForAim } from '../harness/scan-for-aim';
import { between, type Random, seededRandom } from '../harness/seeded-random';

const RAD = Math.PI / 180;

/** A shot from all of the accepted ranges: near and far, massés, breaks, cuts to a right angle. */
function wideQuery(random: Random, slopeM_per_M: number): Query {
  const { shot, kit } = randomQuery(random);
  const tilt = Math.min(slopeM_per_M, 1.2 * kit.rollFriction) * random();
  const clock = between(random, 0, 2 * Math.PI);
  return {
    shot: {
      ...shot,
      distanceM: Math.exp(between(random, Math.log(0.02), Math.log(4.1))),
      cutRad: between(random, -90, 90) * RAD,
      elevationRad: between(random, 0, random() < 0.5 ? 75 : 20) * RAD,
      speedMps: Math.exp(between(random, Math.log(0.3), Math.log(13))),
    },
    kit: {
      ...kit,
      bedSlope: { alongM_per_M: tilt * Math.cos(clock), rightM_per_M: tilt * Math.sin(clock) },
    },
  };
}

interface Refused extends Query {
  readonly reason: RefusalReason;
}

function refusedQueries(count: number, seed: number, slope: number): Refused[] {
  const random = seededRandom(seed);
  const found: Refused[] = [];
  while (found.length < count) {
    const query = wideQuery(random, slope);
    const result = solveAim(query.shot, query.kit);
    if (!result.ok) found.push({ ...query, reason: result.reason });
  }
  return found;
}

describe.each([
  ['level', 0, 400],
  ['steep', 0.01, 250],
] as const)('over the whole range of shots, on a %s bed', (_, slope, wholeCount) => {
  it(
    'no scan of 3,600 aims finds one for a refused shot',
    () => {
      const queries = refusedQueries(campaignSize(16, wholeCount * 10), 71, slope);
      const overlooked = queries.filter((query) => scanForAim(query, 90, 0.05) !== null);
      expect(overlooked).toEqual([]);
    },
    CAMPAIGN_TIMEOUT_MS,
  );

  it(
    'the remedy that a refusal names does help, nineteen times in twenty',
    () => {
      const queries = refusedQueries(campaignSize(200, wholeCount * 50), 72, slope);
      const helped = queries.filter((query) => remediesOf(query).some(isAnswered(query)));
      expect(helped.length / queries.length).toBeGreaterThan(0.95);
      const firmer = queries.filter(({ reason }) => reason === 'stops-short');
      expect(
        firmer.filter((query) => firmerThan(query.shot).some(isAnswered(query))).length,
      ).toBeGreaterThan(0.95 * firmer.length);
    },
    CAMPAIGN_TIMEOUT_MS,
  );
});

const isAnswered =
  ({ shot, kit }: Query) =>
  (change: Partial<Shot>) =>
    solveAim({ ...shot, ...change }, kit).ok;

const firmerThan = ({ speedMps }: Shot) =>
  [1.1, 1.25, 1.5, 2, 3, 4, 6, 8, 12, 20]
    .map((times) => ({ speedMps: speedMps * times }))
    .filter((change) => change.speedMps <= 13);

const softerThan = ({ speedMps }: Shot) =>
  [0.95, 0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3, 0.2].map((times) => ({ speedMps: speedMps * times }));

const lowerThan = ({ elevationRad }: Shot) =>
  [0.9, 0.75, 0.5, 0.35, 0.25, 0.1, 0].map((times) => ({ elevationRad: elevationRad * times }));

const fullerThan = ({ cutRad }: Shot) =>
  [0.95, 0.9, 0.8, 0.6, 0.4, 0.2, 0].map((times) => ({ cutRad: cutRad * times }));

const lessSideThan = ({ side }: Shot) =>
  [0.75, 0.5, 0.25, 0].map((times) => ({ side: side * times }));

const aLittleOffFrom = ({ speedMps, distanceM }: Shot) =>
  [0.95, 0.98, 1.02, 1.05].flatMap((times) => [
    { speedMps: speedMps * times },
    { distanceM: distanceM * times },
  ]);

/** The shots that the words of the refusal advise. */
function remediesOf({ shot, reason }: Refused): Partial<Shot>[] {
  switch (reason) {
    case 'stops-short':
      return firmerThan(shot);
    case 'flies-over':
      return [...lowerThan(shot), ...softerThan(shot)];
    case 'too-thin':
      return fullerThan(shot);
    case 'curves-away':
      return [...lowerThan(shot), ...lessSideThan(shot), ...firmerThan(shot)];
    case 'no-convergence':
      return aLittleOffFrom(shot);
    default:
      return [];
  }
}
