import type { FitReport } from '../../engine/fit/fit-report';
import type { Lesson } from '../../engine/fit/next-shot';
import { LEVEL_SHARE, type TrialBed } from '../../engine/fit/trials/trial';
import {
  shotsToDo,
  TRIAL_NAMES,
  TRIALS,
  type TrialName,
  type TrialShot,
} from '../../engine/fit/trials/trials';
import type { AttemptProgress } from './attempt-progress';
import type { TrialOffer } from './measure-model';

/**
 * Every trial by the shot of it that teaches most, the best first, as far as that suits a person:
 * the simple ones come before, until each has been done, and the raised cue last, until the same
 * shot has been done level. A shot done on one side comes on the other before any raised cue, where it
 * teaches at least {@link LEVEL_SHARE} as much: the two together take a steady error of the aim out.
 * Those of which no shot is worth its stroke come after the others, in
 * their usual order. Before all of them comes the shot that serves what is to be reached.
 *
 * @param report null where nothing is known yet of what a shot teaches
 * @param serves the shot that brings the goal nearer; null where it is reached, or none is known to
 */
export function trialOffers(
  bed: TrialBed,
  report: FitReport | null,
  attempts: readonly AttemptProgress[],
  serves: TrialShot | null = null,
): readonly TrialOffer[] {
  const lessons = [...(report?.lessons ?? [])].sort((a, b) => worthOf(b) - worthOf(a));
  const turn = (trial: TrialName) =>
    trial === serves?.trial ? SERVES_FIRST : turnOf(trial, attempts);
  return firstOfEach([
    ...(serves ? [serves] : []),
    ...lessons.map(({ shot }) => shot),
    ...shotsToDo(bed),
  ])
    .map((shot) => ({ trial: shot.trial, shot, done: doneOf(shot.trial, attempts) }))
    .sort((a, b) => turn(a.trial) - turn(b.trial));
}

/** What a shot teaches, less where it puts the cloth at risk. */
function worthOf({ shot, worth }: Lesson): number {
  return TRIALS[shot.trial].isRaised ? LEVEL_SHARE * worth : worth;
}

function firstOfEach(shots: readonly TrialShot[]): readonly TrialShot[] {
  const first = new Map<string, TrialShot>();
  for (const shot of shots) if (!first.has(shot.trial)) first.set(shot.trial, shot);
  return [...first.values()];
}

function doneOf(trial: TrialName, attempts: readonly AttemptProgress[]): number {
  return attempts.filter((one) => one.now === null && one.attempt.shot.trial === trial).length;
}

/** Before those that one begins with. */
const SERVES_FIRST = -1;
/** The turn of those that what they teach orders: after all that one begins with. */
const ANY_TURN = TRIAL_NAMES.length;

/** When a trial is a person's turn, whatever it teaches. */
function turnOf(trial: TrialName, attempts: readonly AttemptProgress[]): number {
  const { after, beginWith } = TRIALS[trial];
  const easier = TRIAL_NAMES.find((name) => name === after);
  if (easier && doneOf(easier, attempts) === 0) return ANY_TURN + 1;
  return beginWith !== undefined && doneOf(trial, attempts) === 0 ? beginWith : ANY_TURN;
}
