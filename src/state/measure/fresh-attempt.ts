import { MODEL_VERSION, type TrialShot } from '../../engine/fit/trials/trials';
import type { Attempt } from '../../store/attempt';
import type { Choice } from '../../store/records';

/** An attempt at a shot of a trial, of which nothing is done yet. */
export function freshAttempt(
  shot: TrialShot,
  choice: Choice,
  id: string,
  startedAtMs: number,
): Attempt {
  return {
    id,
    startedAtMs,
    modelVersion: MODEL_VERSION,
    choice,
    shot,
    readings: {},
    butt: null,
    stepsDone: [],
    typed: null,
    isStruckOut: false,
  };
}
