import { describe, expect, it } from 'vitest';
import { fitKit } from '../../../../src/engine/fit/fit-kit';
import type { FitShot, KitPrior } from '../../../../src/engine/fit/fit-question';
import { kitKnowledge } from '../../../../src/engine/fit/kit-knowledge';
import { shotsToDo, TRIALS, type TrialName } from '../../../../src/engine/fit/trials/trials';
import { DEFAULT_CUSHION, DEFAULT_KIT, type Kit } from '../../../../src/engine/kit/kit';
import { UNMEASURED } from '../../../../src/engine/kit/kit-spread';
import { HONEST } from '../../../harness/trial-player';

/** Invented: a table with cushions as dead as one in twenty has. */
const DEAD: Kit = { ...DEFAULT_KIT, cushion: { ...DEFAULT_CUSHION, restitution: 0.87 } };
const PARTS = { cue: 'cue', cloth: 'cloth', balls: 'balls', table: 'table' };
const OPEN: KitPrior = { parts: PARTS, kit: DEFAULT_KIT, spread: UNMEASURED };
/** As though every cushion were the usual one. */
const HELD: KitPrior = { ...OPEN, spread: { ...UNMEASURED, cushionRestitution: 1e-6 } };

/** Exact readings, on dead cushions, of each shot of a trial as meant. */
function readOnDead(trial: TrialName, prior: KitPrior): FitShot[] {
  const bed = { lengthM: 2.54, ballRadiusM: DEFAULT_KIT.ballRadiusM };
  return shotsToDo(bed)
    .filter((shot) => shot.trial === trial)
    .map((shot, index) => {
      const readings = TRIALS[trial].predict(DEAD, { aimRad: 0, ...shot.stroke }, shot.setup);
      if (readings === null) throw new Error('nothing to read');
      return { id: `${trial} ${index}`, shot, readings, prior, scatter: HONEST };
    });
}

/** By how many prior deviations the fit takes the player's firm stroke for softer than it is. */
function softer(trials: readonly TrialName[], prior: KitPrior) {
  const fit = fitKit(
    trials.flatMap((trial) => [0, 1, 2].flatMap(() => readOnDead(trial, prior))),
    [PARTS],
  );
  const at = fit.layout.indexOf('player', 'player', 'firm');
  return { sds: -(fit.unknowns[at] ?? Number.NaN), fit };
}

describe('a run up a table with dead cushions', () => {
  it('is not taken for a soft player’s once rebounds have been read', () => {
    const { sds, fit } = softer(['speed', 'coast', 'rebound', 'angle'], OPEN);
    expect(fit.converged).toBe(true);
    expect(Math.abs(sds)).toBeLessThan(0.15);
    expect(kitKnowledge(fit, OPEN).kit.cushion.restitution).toBeCloseTo(0.87, 1);
  });

  it('would be, were cushions not among what is unknown', () => {
    expect(softer(['speed', 'coast'], HELD).sds).toBeGreaterThan(0.2);
  });
});
