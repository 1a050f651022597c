import { beforeAll, describe, expect, it } from 'vitest';
import { solveAim } from '../../src/engine/direct/solve-aim';
import { squirtAngle } from '../../src/engine/impacts/strike';
import type { Kit } from '../../src/engine/kit/kit';
import { KIT_QUANTITIES, type KitQuantity, quantityIn } from '../../src/engine/kit/kit-spread';
import { CAMPAIGN_TIMEOUT_MS, campaignSize, tell } from '../harness/campaign-size';
import { median, quantile } from '../harness/quantile';
import { randomQuery } from '../harness/random-shots';
import { seededRandom } from '../harness/seeded-random';
import {
  type Calibrated,
  calibrate,
  MIDDLE,
  reportOn,
  struckAstray,
} from '../harness/trial-player';

const PLAYERS = campaignSize(5, 500);
const PROPOSED = 14;
/** Medians of a few scatter by a third; the whole campaign holds the promise itself. */
const SLACK = campaignSize(1.6, 1);
const DEG = 180 / Math.PI;
const AIM_SHOTS = campaignSize(40, 200);

let calibrated: readonly Calibrated[] = [];

beforeAll(() => {
  calibrated = Array.from({ length: PLAYERS }, (_, index) => calibrate(7000 + index, PROPOSED));
}, CAMPAIGN_TIMEOUT_MS);

/** Error of the estimate's logarithm over its claimed deviation. */
function errorInSds({ player, report }: Calibrated, quantity: KitQuantity): number {
  return logError(report.knowledge.kit, player.kit, quantity) / report.knowledge.spread[quantity];
}

function logError(kit: Kit, truth: Kit, quantity: KitQuantity): number {
  return Math.log(quantityIn(kit, quantity) / quantityIn(truth, quantity));
}

function squirtDeg({ massRatio }: Kit): number {
  return squirtAngle(0.5, massRatio) * DEG;
}

const MEASURED = ['massRatio', 'slideFriction', 'rollFriction'] as const;

describe('two coasts and fourteen shots that the app proposes, read off another model', () => {
  it('settle', () => {
    expect(calibrated.filter(({ report }) => report.converged)).toHaveLength(PLAYERS);
  });

  it('tell the squirt at half a radius of side to 0.12 degrees', () => {
    const errors = calibrated.map(({ player, report }) =>
      Math.abs(squirtDeg(report.knowledge.kit) - squirtDeg(player.kit)),
    );
    tell(`squirt: median error ${median(errors).toFixed(3)} degrees`);
    expect(median(errors)).toBeLessThan(0.12 * SLACK);
  });

  it.each([
    ['slideFriction', 0.08],
    ['rollFriction', 0.04],
  ] as const)('tell %s to a share of %f', (quantity, promised) => {
    const errors = calibrated.map(({ player, report }) =>
      Math.abs(logError(report.knowledge.kit, player.kit, quantity)),
    );
    tell(`${quantity}: median error ${(100 * median(errors)).toFixed(1)} %`);
    expect(median(errors)).toBeLessThan(promised * SLACK);
  });

  it.each(MEASURED)('hold the true %s within two deviations as often as they say', (quantity) => {
    const inside = calibrated.filter((one) => Math.abs(errorInSds(one, quantity)) < 1.96).length;
    const share = inside / PLAYERS;
    tell(`${quantity}: ${(100 * share).toFixed(1)} % of 95 % intervals hold it`);
    expect(share).toBeGreaterThan(campaignSize(0.7, 0.9));
    expect(share).toBeLessThan(campaignSize(1.001, 0.98));
  });

  it('bring the aims nearer', () => {
    const random = seededRandom(1);
    const [before, after] = [0, 0].map(() => [] as number[]);
    for (let shot = 0; shot < AIM_SHOTS; shot++) {
      const { player, report } = calibrated[shot % PLAYERS] as Calibrated;
      const query = randomQuery(random).shot;
      const [truth, assumed, measured] = [player.kit, MIDDLE.kit, report.knowledge.kit].map((kit) =>
        solveAim(query, kit),
      );
      if (!(truth?.ok && assumed?.ok && measured?.ok)) continue;
      before?.push(assumed.aimRad - truth.aimRad);
      after?.push(measured.aimRad - truth.aimRad);
    }
    const ratio = rootMeanSquare(after ?? []) / rootMeanSquare(before ?? []);
    tell(`aim error after over before: ${ratio.toFixed(2)} (${after?.length} shots)`);
    expect(after?.length).toBeGreaterThan(AIM_SHOTS / 3);
    expect(ratio).toBeLessThan(0.6);
  });

  it('shrug off a shot gone astray', () => {
    const players = calibrated.slice(0, campaignSize(3, 100));
    const moved = players.map((one) => {
      const twelve = one.shots.slice(0, 12);
      const honest = reportOn(twelve).knowledge;
      const astray = reportOn(struckAstray(twelve)).knowledge;
      const error = logError(astray.kit, honest.kit, 'massRatio');
      return Math.abs(error) / honest.spread.massRatio;
    });
    const most = Math.max(...moved);
    tell(
      `an outlier in twelve moves the squirt by ${median(moved).toFixed(2)} sd, ${most} at most`,
    );
    // Of a hundred players one was moved by 1.01.
    expect(quantile(moved, 0.98)).toBeLessThan(1);
    expect(most).toBeLessThan(1.1);
  });

  it('say of every quantity how sure it is', () => {
    for (const { report } of calibrated) {
      for (const quantity of KIT_QUANTITIES) {
        expect(report.knowledge.spread[quantity]).toBeGreaterThan(0);
        expect(report.knowledge.spread[quantity]).toBeLessThanOrEqual(
          MIDDLE.spread[quantity] * 1.0001,
        );
      }
    }
  });
});

function rootMeanSquare(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
}
