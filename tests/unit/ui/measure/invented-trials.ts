import type { TrialName, TrialShot } from '../../../../src/engine/fit/trials/trials';
import { shotsToDo } from '../../../../src/engine/fit/trials/trials';
import type { Attempt } from '../../../../src/store/attempt';

/** A nine-foot table. */
export const BED = { lengthM: 2.54, ballRadiusM: 0.028575 };

/** A shot of a trial on a nine-foot table, the last that can be done: with right side, if any. */
export function shotOf(trial: TrialName): TrialShot {
  const shot = shotsToDo(BED)
    .filter((one) => one.trial === trial)
    .at(-1);
  if (!shot) throw new Error(`there is no shot of ${trial}`);
  return shot;
}

/** An invented attempt at a trial, with nothing done yet. */
export function begunAttempt(trial: TrialName): Attempt {
  return {
    id: `attempt-${trial}`,
    startedAtMs: 1_790_000_000_000,
    modelVersion: 1,
    choice: {
      cues: 'demo-cue-house',
      cloths: 'demo-cloth-club',
      balls: 'demo-balls-clean',
      tables: 'demo-table-9ft',
    },
    shot: shotOf(trial),
    readings: {},
    butt: null,
    stepsDone: [],
    typed: null,
    isStruckOut: false,
  };
}

/** An invented line shot, read. */
export const FINISHED_LINE: Attempt = {
  ...begunAttempt('line'),
  readings: { landingM: -0.082 },
  stepsDone: ['place', 'play', 'landingM'],
};
