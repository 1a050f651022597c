import { expect, it } from 'vitest';
import { solveAim } from '../../src/engine/direct/solve-aim';
import { CAMPAIGN_TIMEOUT_MS, campaignSize } from '../harness/campaign-size';
import { randomQuery } from '../harness/random-shots';
import { seededRandom } from '../harness/seeded-random';

it(
  'answers at least 97 % of the shots that a player could mean',
  () => {
    const random = seededRandom(97);
    const asked = campaignSize(10_000, 1_000_000);
    let answered = 0;
    for (let count = 0; count < asked; count++) {
      const { shot, kit } = randomQuery(random);
      if (solveAim(shot, kit).ok) answered++;
    }
    expect(answered / asked).toBeGreaterThanOrEqual(0.97);
  },
  CAMPAIGN_TIMEOUT_MS,
);
