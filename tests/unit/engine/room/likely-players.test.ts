import { describe, expect, it } from 'vitest';
import { UNMEASURED } from '../../../../src/engine/kit/kit-spread';
import { linearChance } from '../../../../src/engine/plan/linear-chance';
import { strokeByRule } from '../../../../src/engine/player/player-rule';
import { chanceOf } from '../../../../src/engine/room/chance';
import type { LikelyStroke, StrokeProfile } from '../../../../src/engine/room/stroke-profile';
import { seededRandom } from '../../../harness/seeded-random';
import { randomSolvedShot } from '../../../harness/solved-shots';

const RAD = Math.PI / 180;
/** Invented: a steady stroke with great errors, a wide one with hardly any, and one in between. */
const EACH = [
  { deg: 0.08, aimRad: 0.003, fullRad: -0.002, speed: 0.04, times: 0.8 },
  { deg: 0.2, aimRad: -0.001, fullRad: 0.001, speed: 0, times: 1 },
  { deg: 0.45, aimRad: 0, fullRad: 0.0005, speed: -0.03, times: 1.3 },
  { deg: 0.12, aimRad: -0.002, fullRad: 0.002, speed: 0.02, times: 1.1 },
] as const;
/** Each with a cue of their own, of which all is known. */
const SPREAD = { ...UNMEASURED, massRatio: 0 };

const alone = EACH.map(({ deg, aimRad, fullRad, speed, times }): StrokeProfile => {
  const steady = { aimRad, fullRad, speedShare: speed, massRatioTimes: times };
  return { ...strokeByRule(deg * RAD), elevationRad: 0.005, steady };
});
const likely = alone.map(({ directionRad, tipM, speedShare, steady }): LikelyStroke => {
  if (steady === undefined) throw new Error('nobody is without errors');
  const { aimRad, fullRad, speedShare: speed, massRatioTimes = 1 } = steady;
  return [directionRad, tipM, speedShare, aimRad, fullRad, speed, massRatioTimes];
});
const together: StrokeProfile = {
  ...strokeByRule(0.2 * RAD),
  elevationRad: 0.005,
  steady: { aimRad: 0, fullRad: 0.0004, speedShare: 0.01, massRatioTimes: 1.05 },
  likely,
};

describe('a player who may be one of several', () => {
  const random = seededRandom(74);
  const shots = Array.from({ length: 12 }, () => randomSolvedShot(random));

  it('makes a shot as often as they do in the mean, whatever the middle of them would', () => {
    const off = shots.map(({ task, kit, stroke }) => {
      const of = (profile: StrokeProfile) => chanceOf(task, kit, stroke, profile, SPREAD).share;
      return (
        chanceOf(task, kit, stroke, together, UNMEASURED).share -
        alone.reduce((sum, profile) => sum + of(profile), 0) / alone.length
      );
    });
    // Each of them plays a quarter of the draws alone.
    expect(Math.max(...off.map(Math.abs))).toBeLessThan(0.06);
    expect(Math.abs(off.reduce((sum, one) => sum + one, 0) / off.length)).toBeLessThan(0.015);
  });

  it('has the squirt of one of their cues, or of the one cue that is known', () => {
    for (const { task, kit, stroke } of shots.slice(0, 3)) {
      const of = (profile: StrokeProfile, spread: typeof SPREAD) =>
        chanceOf(task, kit, stroke, profile, spread);
      const less = { ...UNMEASURED, massRatio: UNMEASURED.massRatio / 2 };
      expect(of(together, less)).toEqual(of(together, UNMEASURED));
      const alike = likely.map(
        (one): LikelyStroke => [one[0], one[1], one[2], one[3], one[4], one[5], 1.05],
      );
      expect(of(together, SPREAD)).toEqual(of({ ...together, likely: alike }, UNMEASURED));
    }
  });

  it('is counted as often by straight lines, about', () => {
    const off = shots.flatMap(({ task, kit, stroke }) => {
      const quick = linearChance(task, kit, stroke, together, UNMEASURED);
      return quick === null
        ? []
        : [quick.share - chanceOf(task, kit, stroke, together, UNMEASURED).share];
    });
    const middle = off.map(Math.abs).sort((a, b) => a - b)[Math.floor(off.length / 2)];
    expect(off.length).toBeGreaterThan(5);
    expect(middle).toBeLessThan(0.03);
  });
});
