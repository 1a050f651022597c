import { beforeAll, describe, expect, it } from 'vitest';
import type { Kit } from '../../src/engine/kit/kit';
import { CAMPAIGN_TIMEOUT_MS, campaignSize, tell } from '../harness/campaign-size';
import { median } from '../harness/quantile';
import { type Calibrated, calibrateCushions, MIDDLE } from '../harness/trial-player';

const PLAYERS = campaignSize(5, 500);
const SHOTS = 12;
/** Medians of a few scatter by a third; the whole campaign holds the promise itself. */
const SLACK = campaignSize(1.6, 1);

let calibrated: readonly Calibrated[] = [];

beforeAll(() => {
  calibrated = Array.from({ length: PLAYERS }, (_, index) =>
    calibrateCushions(9100 + index, SHOTS),
  );
}, CAMPAIGN_TIMEOUT_MS);

const restitutionOf = ({ cushion }: Kit) => cushion.restitution;

/** How far off the restitution is of what was estimated, and of what stood before; of some players. */
function missesOf(players: readonly Calibrated[]) {
  const miss = (kitOf: (one: Calibrated) => Kit) =>
    median(
      players.map((one) => Math.abs(restitutionOf(kitOf(one)) - restitutionOf(one.player.kit))),
    );
  return { after: miss(({ report }) => report.knowledge.kit), before: miss(() => MIDDLE.kit) };
}

describe('two coasts and twelve shots off cushions, read off another model', () => {
  it('settle, but for one in fifty', () => {
    const settled = calibrated.filter(({ report }) => report.converged).length;
    tell(`${settled} of ${PLAYERS} settle`);
    expect(settled / PLAYERS).toBeGreaterThan(campaignSize(0.8, 0.96));
  });

  it('tell the restitution of cushions to 0.025, and nearer than it was known', () => {
    const { after, before } = missesOf(calibrated);
    tell(`restitution: median error ${after.toFixed(4)}, of the prior ${before.toFixed(4)}`);
    expect(after).toBeLessThan(0.025 * SLACK);
    expect(after).toBeLessThan(before * SLACK);
  });

  // Between a dead one and a livelier, rougher one readings often leave a doubt.
  it('tell a dead cushion from a usual one', () => {
    const dead = calibrated.filter(({ player }) => restitutionOf(player.kit) < 0.96);
    const { after, before } = missesOf(dead);
    tell(`of ${dead.length} dead cushions: ${after.toFixed(4)}, of the prior ${before.toFixed(4)}`);
    expect(dead.length).toBeGreaterThan(0);
    expect(after).toBeLessThan(0.03 * SLACK);
    expect(after).toBeLessThan(before / 1.5);
  });

  it('hold the true restitution within two deviations as often as they say', () => {
    const inside = calibrated.filter(({ player, report: { knowledge } }) => {
      const lack = (kit: Kit) => Math.log(1 - restitutionOf(kit));
      const sds = (lack(player.kit) - lack(knowledge.kit)) / knowledge.spread.cushionRestitution;
      return Math.abs(sds) < 1.96;
    }).length;
    tell(`restitution: ${((100 * inside) / PLAYERS).toFixed(1)} % of 95 % intervals hold it`);
    expect(inside / PLAYERS).toBeGreaterThan(campaignSize(0.5, 0.9));
    expect(inside / PLAYERS).toBeLessThan(campaignSize(1.001, 0.98));
  });
});
