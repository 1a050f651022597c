import type { FitReport } from '../../engine/fit/fit-report';
import { shotsToDo, type TrialBed } from '../../engine/fit/shots-to-do';
import type { TrialShot } from '../../engine/fit/trial-shot';
import type { AttemptProgress, TrialOffer } from './measure-model';

/**
 * Every trial by the shot of it that teaches most, the best first; those of which no shot is worth
 * its stroke come last, in their usual order.
 *
 * @param report null where nothing is known yet of what a shot teaches
 */
export function trialOffers(
  bed: TrialBed,
  report: FitReport | null,
  attempts: readonly AttemptProgress[],
): readonly TrialOffer[] {
  const lessons = report?.lessons.map(({ shot }) => shot) ?? [];
  return firstOfEach([...lessons, ...shotsToDo(bed)]).map((shot, rank) => ({
    trial: shot.trial,
    shot,
    done: attempts.filter((one) => one.now === null && one.attempt.shot.trial === shot.trial)
      .length,
    rank,
  }));
}

function firstOfEach(shots: readonly TrialShot[]): readonly TrialShot[] {
  const first = new Map<string, TrialShot>();
  for (const shot of shots) if (!first.has(shot.trial)) first.set(shot.trial, shot);
  return [...first.values()];
}
