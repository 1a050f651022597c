import type { FitReport } from '../../engine/fit/fit-report';
import { shotsToDo, type TrialBed } from '../../engine/fit/shots-to-do';
import type { TrialName, TrialShot } from '../../engine/fit/trial-shot';
import type { AttemptProgress } from './attempt-progress';
import type { TrialOffer } from './measure-model';

/** Level and done within minutes by one person: each of them once, before all that teaches more. */
const FIRST: readonly TrialName[] = ['line', 'coast', 'throw'];

/**
 * Every trial by the shot of it that teaches most, the best first, as far as that suits a person:
 * the simple ones come before, until each has been done, and the raised cue last, until the same
 * shot has been done level. Those of which no shot is worth its stroke come after the others, in
 * their usual order.
 *
 * @param report null where nothing is known yet of what a shot teaches
 */
export function trialOffers(
  bed: TrialBed,
  report: FitReport | null,
  attempts: readonly AttemptProgress[],
): readonly TrialOffer[] {
  const lessons = report?.lessons.map(({ shot }) => shot) ?? [];
  return firstOfEach([...lessons, ...shotsToDo(bed)])
    .map((shot) => ({ trial: shot.trial, shot, done: doneOf(shot.trial, attempts) }))
    .sort((a, b) => turnOf(a.trial, attempts) - turnOf(b.trial, attempts));
}

function firstOfEach(shots: readonly TrialShot[]): readonly TrialShot[] {
  const first = new Map<string, TrialShot>();
  for (const shot of shots) if (!first.has(shot.trial)) first.set(shot.trial, shot);
  return [...first.values()];
}

function doneOf(trial: TrialName, attempts: readonly AttemptProgress[]): number {
  return attempts.filter((one) => one.now === null && one.attempt.shot.trial === trial).length;
}

/** When a trial is a person's turn, whatever it teaches; the same for those that teaching orders. */
function turnOf(trial: TrialName, attempts: readonly AttemptProgress[]): number {
  if (trial === 'curve') return FIRST.length + (doneOf('line', attempts) === 0 ? 1 : 0);
  const first = FIRST.indexOf(trial);
  return first >= 0 && doneOf(trial, attempts) === 0 ? first : FIRST.length;
}
