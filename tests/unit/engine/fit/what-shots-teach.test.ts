import { describe, expect, it } from 'vitest';
import { layOut } from '../../../../src/engine/fit/fit-layout';
import { changePerUnknown } from '../../../../src/engine/fit/fit-problem';
import type { FitShot } from '../../../../src/engine/fit/fit-question';
import { bendOf } from '../../../../src/engine/fit/influence';
import { readingCovariance, slopesPerStray } from '../../../../src/engine/fit/shot-evidence';
import {
  NO_STRAYS,
  predictedReadings,
  shotResiduals,
} from '../../../../src/engine/fit/shot-residuals';
import type { TrialShot } from '../../../../src/engine/fit/trials/trials';
import { type KitQuantity, UNMEASURED } from '../../../../src/engine/kit/kit-spread';
import { cholesky, choleskySolve } from '../../../../src/engine/numerics/cholesky';
import { HONEST, MIDDLE, READABLE } from '../../../harness/trial-player';

/**
 * What one shot alone tells of a quantity, all others known: one standard deviation as a share, by
 * Fisher's information of its readings under honest errors; and how its readings bend.
 */
function taughtBy(shot: TrialShot, quantity: KitQuantity) {
  const blank: FitShot = { id: '', shot, readings: {}, prior: MIDDLE, scatter: HONEST };
  const layout = layOut([blank]);
  const middle = layout.unknowns.map(() => 0);
  const readings = predictedReadings(blank, layout, middle) ?? {};
  const residuals = shotResiduals({ ...blank, readings }, layout);
  const none = residuals.at(middle, NO_STRAYS) ?? [];
  const atStrays = (strays: readonly number[]) => residuals.at(middle, strays);
  const perStray = slopesPerStray(atStrays, NO_STRAYS, none);
  const columns = changePerUnknown(residuals, middle, { strays: NO_STRAYS, residuals: none });
  const place = residuals.touches.findIndex(
    (index) => layout.unknowns[index]?.quantity === quantity,
  );
  const column = columns[place] ?? none.map(() => 0);
  const factor = cholesky(readingCovariance(perStray)) ?? [];
  const weighed = choleskySolve(factor, column);
  const information = column.reduce((sum, slope, row) => sum + slope * (weighed[row] ?? 0), 0);
  return {
    share: UNMEASURED[quantity] / Math.sqrt(information),
    bend: bendOf(atStrays, NO_STRAYS, none, perStray),
  };
}

function shotsOf(trial: TrialShot['trial'], isWanted: (shot: TrialShot) => boolean = () => true) {
  const shots = READABLE.filter((shot) => shot.trial === trial && isWanted(shot));
  expect(shots.length).toBeGreaterThan(0);
  return shots;
}

function best(shots: readonly TrialShot[], quantity: KitQuantity): number {
  return Math.min(...shots.map((shot) => taughtBy(shot, quantity).share));
}

const SLIDE = 'slideFriction';

describe('what one shot teaches', () => {
  it('is of the squirt about a quarter, level or raised', () => {
    for (const shot of shotsOf('line')) {
      expect(taughtBy(shot, 'massRatio').share).toBeCloseTo(0.26, 1);
    }
    expect(best(shotsOf('curve'), 'massRatio')).toBeCloseTo(0.25, 1);
  });

  it('is of slide friction next to nothing from a level line', () => {
    expect(best(shotsOf('line'), SLIDE)).toBeGreaterThan(1);
  });

  it('is of slide friction as much from an easy stop as from the most raised and hardest curve', () => {
    const stop = best(shotsOf('stop'), SLIDE);
    expect(stop).toBeLessThan(0.25);
    expect(best(shotsOf('curve'), SLIDE)).toBeLessThan(0.25);
    const lessRaised = shotsOf('curve', ({ stroke }) => stroke.elevationRad < 0.2);
    expect(stop).toBeLessThan(best(lessRaised, SLIDE));
  });

  it('bends where the ball may or may not roll yet as it is met, and hardly elsewhere', () => {
    const bends = shotsOf('stop').map((shot) => taughtBy(shot, SLIDE).bend);
    expect(Math.max(...bends)).toBeGreaterThan(0.7);
    for (const shot of shotsOf('line')) expect(taughtBy(shot, SLIDE).bend).toBeLessThan(0.1);
  });

  it('is of ball friction about a third from a cut, and little from side alone', () => {
    const cut = shotsOf('throw', ({ setup }) => setup.cutRad !== 0);
    const full = shotsOf('throw', ({ setup }) => setup.cutRad === 0);
    expect(best(cut, 'ballFriction')).toBeLessThan(0.4);
    expect(best(full, 'ballFriction')).toBeGreaterThan(0.6);
  });

  it('is of roll friction a twentieth from one coast', () => {
    expect(best(shotsOf('coast'), 'rollFriction')).toBeCloseTo(0.06, 1);
  });
});
