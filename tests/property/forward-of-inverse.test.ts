import { expect, it } from 'vitest';
import { playAim } from '../../src/engine/direct/play-aim';
import { solveAim } from '../../src/engine/direct/solve-aim';
import { CAMPAIGN_TIMEOUT_MS, campaignSize } from '../harness/campaign-size';
import { randomQuery } from '../harness/random-shots';
import { seededRandom } from '../harness/seeded-random';

const RAD = Math.PI / 180;
const SHOTS = campaignSize(5000, 500_000);

it(
  `playing the aim sends the object ball within 0.001° of the target line, ${SHOTS} shots`,
  () => {
    const random = seededRandom(5000);
    let count = 0;
    let worstRad = 0;
    while (count < SHOTS) {
      const { shot, kit } = randomQuery(random, count % 5 === 0 ? 0.002 : 0);
      const aim = solveAim(shot, kit);
      if (!aim.ok) continue;
      const played = playAim(shot, kit, aim.aimRad);
      const direction = played.ok ? played.objectBall.directionRad : null;
      worstRad = Math.max(
        worstRad,
        Math.abs((direction ?? Number.POSITIVE_INFINITY) - shot.cutRad),
      );
      count++;
    }
    expect(count).toBe(SHOTS);
    expect(worstRad).toBeLessThan(0.001 * RAD);
  },
  CAMPAIGN_TIMEOUT_MS,
);
