import { describe, expect, it } from 'vitest';
import type { Lesson } from '../../../../src/engine/fit/next-shot';
import { shotsToDo } from '../../../../src/engine/fit/shots-to-do';
import { TRIAL_NAMES, type TrialName } from '../../../../src/engine/fit/trial-shot';
import { DEFAULT_KIT } from '../../../../src/engine/model/kit';
import { UNMEASURED } from '../../../../src/engine/room/kit-spread';
import { trialOffers } from '../../../../src/state/measure/trial-offers';
import { inventedReport, LINE } from './open-measure';

const BED = { lengthM: 2.54, ballRadiusM: 0.028575 };

/** The last shot of a trial that the engine would propose. */
function lastOf(trial: TrialName) {
  const shot = shotsToDo(BED)
    .filter((one) => one.trial === trial)
    .at(-1);
  if (!shot) throw new Error(`no ${trial} shots`);
  return shot;
}

const lesson = (trial: TrialName, worth: number): Lesson => ({
  shot: lastOf(trial),
  expected: {},
  worth,
  teaches: 'massRatio',
});

describe('the trials on offer', () => {
  it('are all of them, in their usual order, before anything is known', () => {
    const offers = trialOffers(BED, null, []);
    expect(offers.map(({ trial }) => trial)).toEqual(TRIAL_NAMES);
    expect(offers.map(({ rank }) => rank)).toEqual([0, 1, 2, 3, 4, 5, 6]);
  });

  it('have those that teach most first, by the shot that does, and the rest after', () => {
    const lessons = [lesson('stop', 3), lesson('line', 2), { ...lesson('stop', 1), shot: LINE }];
    const parts = { cue: 'c', cloth: 'd', balls: 'b', table: 't' };
    const empty = inventedReport({
      shots: [],
      prior: { parts, kit: DEFAULT_KIT, spread: UNMEASURED },
      scatter: { directionRad: 0.01, tipM: 0.001, elevationRad: 0.01, speedShare: 0.1 },
      aims: [],
      candidates: [],
    });
    const offers = trialOffers(BED, { ...empty, lessons }, []);
    expect(offers.slice(0, 2).map(({ shot }) => shot)).toEqual([lastOf('stop'), lastOf('line')]);
    expect(offers.map(({ trial }) => trial).sort()).toEqual([...TRIAL_NAMES].sort());
  });
});
