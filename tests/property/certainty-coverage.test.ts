import { expect, it } from 'vitest';
import { strokeOf } from '../../src/engine/direct/shot';
import { solveAim } from '../../src/engine/direct/solve-aim';
import { directPot } from '../../src/engine/goal/direct-pot';
import { DEFAULT_KIT } from '../../src/engine/kit/kit';
import { KIT_QUANTITIES, kitMoved, UNMEASURED } from '../../src/engine/kit/kit-spread';
import { certaintyOf } from '../../src/engine/room/certainty';
import { CAMPAIGN_TIMEOUT_MS, campaignSize } from '../harness/campaign-size';
import { normalDraw } from '../harness/normal-draw';
import { randomQuery } from '../harness/random-shots';
import { type Random, seededRandom } from '../harness/seeded-random';

const KITS = campaignSize(500, 20_000);

/** A hidden kit, drawn from what is not known of the default one. */
function hiddenKit(random: Random) {
  return KIT_QUANTITIES.reduce(
    (kit, quantity) => kitMoved(kit, UNMEASURED, quantity, normalDraw(random)),
    DEFAULT_KIT,
  );
}

/** How sure an aim is hangs on no target. */
const ANYWHERE = { kind: 'angle', halfAngleRad: 1 } as const;

it(
  `holds the true aim within two standard deviations for 92-98 % of ${KITS} hidden kits`,
  () => {
    const random = seededRandom(50);
    let count = 0;
    let within = 0;
    while (count < KITS) {
      const { shot } = randomQuery(random);
      const assumed = solveAim(shot, DEFAULT_KIT);
      const truth = solveAim(shot, hiddenKit(random));
      if (!assumed.ok || !truth.ok) continue;
      const { aimSdRad } = certaintyOf(
        directPot(shot, ANYWHERE, DEFAULT_KIT.ballRadiusM),
        DEFAULT_KIT,
        strokeOf(shot, assumed.aimRad),
        UNMEASURED,
      );
      if (Math.abs(truth.aimRad - assumed.aimRad) <= 2 * aimSdRad) within++;
      count++;
    }
    expect(count).toBe(KITS);
    expect(within / KITS).toBeGreaterThanOrEqual(0.92);
    expect(within / KITS).toBeLessThanOrEqual(0.98);
  },
  CAMPAIGN_TIMEOUT_MS,
);
