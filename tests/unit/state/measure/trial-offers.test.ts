import { describe, expect, it } from 'vitest';
import type { FitReport } from '../../../../src/engine/fit/fit-report';
import type { Lesson } from '../../../../src/engine/fit/next-shot';
import { shotsToDo, TRIAL_NAMES, type TrialName } from '../../../../src/engine/fit/trials/trials';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { UNMEASURED } from '../../../../src/engine/kit/kit-spread';
import { freshAttempt } from '../../../../src/state/measure/attempt-changes';
import type { AttemptProgress } from '../../../../src/state/measure/attempt-progress';
import { trialOffers } from '../../../../src/state/measure/trial-offers';
import { TRIAL_STEPS } from '../../../../src/state/measure/trial-steps';
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

/** A report by which these teach most, in that order. */
function reportOf(lessons: readonly Lesson[]): FitReport {
  const parts = { cue: 'c', cloth: 'd', balls: 'b', table: 't' };
  const empty = inventedReport({
    shots: [],
    prior: { parts, kit: DEFAULT_KIT, spread: UNMEASURED },
    scatter: { directionRad: 0.01, tipM: 0.001, elevationRad: 0.01, speedShare: 0.1 },
    aims: [],
    candidates: [],
  });
  return { ...empty, lessons };
}

const CHOICE = { cues: 'c', cloths: 'd', balls: 'b', tables: 't' };

/** Each of these trials, begun, and as far as these tests look, done. */
const doneOnce = (...trials: readonly TrialName[]): AttemptProgress[] =>
  trials.map((trial) => ({
    attempt: freshAttempt(lastOf(trial), CHOICE, trial, 0),
    steps: [],
    now: null,
  }));

const RAISED_FIRST = reportOf([lesson('curve', 3), lesson('stop', 2), lesson('line', 1)]);
const trialsOf = (...given: Parameters<typeof trialOffers>) =>
  trialOffers(...given).map(({ trial }) => trial);

describe('the trials on offer', () => {
  it('are all of them before anything is known: the simple ones first, the raised cue last', () => {
    const trials = trialsOf(BED, null, []);
    const others = ['stop', 'pivot', 'speed', 'rebound', 'angle'];
    expect(trials).toEqual(['line', 'coast', 'throw', ...others, 'curve']);
    expect([...trials].sort()).toEqual([...TRIAL_NAMES].sort());
  });

  it('begin with a level line while nothing is measured, whatever would teach more', () => {
    const trials = trialsOf(BED, RAISED_FIRST, []);
    expect(trials.slice(0, 4)).toEqual(['line', 'coast', 'throw', 'stop']);
    expect(trials.at(-1)).toBe('curve');
  });

  it('go on to the other simple ones, and count none that is not finished', () => {
    expect(trialsOf(BED, RAISED_FIRST, doneOnce('line')).slice(0, 3)).toEqual([
      'coast',
      'throw',
      'curve',
    ]);
    const [begun] = doneOnce('line').map((one) => ({ ...one, now: TRIAL_STEPS.line[0] ?? null }));
    expect(trialsOf(BED, RAISED_FIRST, begun ? [begun] : [])[0]).toBe('line');
  });

  it('leave the raised cue last until the same was shot level', () => {
    expect(trialsOf(BED, RAISED_FIRST, doneOnce('coast', 'throw', 'stop')).at(-1)).toBe('curve');
    expect(trialsOf(BED, RAISED_FIRST, doneOnce('coast', 'throw', 'line'))[0]).toBe('curve');
  });

  it('have those that teach most first from then on, by the shot that does', () => {
    const report = reportOf([
      lesson('stop', 3),
      lesson('line', 2),
      { ...lesson('stop', 1), shot: LINE },
    ]);
    const offers = trialOffers(BED, report, doneOnce('line', 'coast', 'throw'));
    expect(offers.slice(0, 2).map(({ shot }) => shot)).toEqual([lastOf('stop'), lastOf('line')]);
    expect(offers.map(({ trial }) => trial).sort()).toEqual([...TRIAL_NAMES].sort());
  });
});
