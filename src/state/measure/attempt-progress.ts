import type { Attempt } from '../../store/attempt';
import { TRIAL_STEPS, type TrialStep } from './trial-steps';

/** An attempt, and how far it has come. */
export interface AttemptProgress {
  readonly attempt: Attempt;
  readonly steps: readonly TrialStep[];
  /** The step to do now; null once all are done. */
  readonly now: TrialStep | null;
}

/** How far an attempt has come: it goes on at the first step that is not done. */
export function progressOf(attempt: Attempt): AttemptProgress {
  const steps = TRIAL_STEPS[attempt.shot.trial];
  const now = steps.find(({ name }) => !attempt.stepsDone.includes(name)) ?? null;
  return { attempt, steps, now };
}

/** The attempt with a step done; nothing is left on the keypad. */
export function withStepDone(attempt: Attempt, { name }: TrialStep): Attempt {
  return { ...attempt, stepsDone: [...attempt.stepsDone, name], typed: null };
}

/** The attempt with its last step taken back, and what was read there; null where none is done. */
export function withStepBack(attempt: Attempt): Attempt | null {
  const { steps } = progressOf(attempt);
  const last = steps.filter(({ name }) => attempt.stepsDone.includes(name)).at(-1);
  if (last === undefined) return null;
  const readings = Object.entries(attempt.readings).filter(([name]) => name !== last.name);
  return {
    ...attempt,
    readings: Object.fromEntries(readings),
    butt: last.kind === 'butt' ? null : attempt.butt,
    stepsDone: attempt.stepsDone.filter((name) => name !== last.name),
    typed: null,
  };
}
