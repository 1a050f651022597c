import { describe, expect, it } from 'vitest';
import type { FitReport } from '../../../../src/engine/fit/fit-report';
import type { Lesson } from '../../../../src/engine/fit/next-shot';
import { TRIAL_NAMES, type TrialName } from '../../../../src/engine/fit/trials/trials';
import { freshAttempt } from '../../../../src/state/measure/attempt-changes';
import type { AttemptProgress } from '../../../../src/state/measure/attempt-progress';
import { trialOffers } from '../../../../src/state/measure/trial-offers';
import { TRIAL_STEPS } from '../../../../src/state/measure/trial-steps';
import { BED, shotOf } from '../../ui/measure/invented-trials';
import { jobOf } from '../../worker/invented-jobs';
import { inventedReport, LINE } from './open-measure';

const lesson = (trial: TrialName, worth: number): Lesson => ({
  shot: shotOf(trial),
  expected: {},
  worth,
  teaches: 'massRatio',
});

/** A report by which these teach most, in that order. */
function reportOf(lessons: readonly Lesson[]): FitReport {
  return { ...inventedReport(jobOf(0.1)), lessons };
}

const CHOICE = { cues: 'c', cloths: 'd', balls: 'b', tables: 't' };

/** Each of these trials, begun, and as far as these tests look, done. */
const doneOnce = (...trials: readonly TrialName[]): AttemptProgress[] =>
  trials.map((trial) => ({
    attempt: freshAttempt(shotOf(trial), CHOICE, trial, 0),
    steps: [],
    now: null,
  }));

const RAISED_FIRST = reportOf([lesson('curve', 3), lesson('stop', 1.4), lesson('line', 1)]);
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
    expect(offers.slice(0, 2).map(({ shot }) => shot)).toEqual([shotOf('stop'), shotOf('line')]);
    expect(offers.map(({ trial }) => trial).sort()).toEqual([...TRIAL_NAMES].sort());
  });

  it('have a level shot before a raised one where it teaches half as much', () => {
    const first = (worth: number) =>
      trialsOf(
        BED,
        reportOf([lesson('curve', 3), lesson('line', worth)]),
        doneOnce('coast', 'throw', 'line'),
      )[0];
    expect(first(1.6)).toBe('line');
    expect(first(1.4)).toBe('curve');
  });
});
