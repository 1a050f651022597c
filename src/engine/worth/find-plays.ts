import type { WaysQuestion } from '../ways/ways-question';
import { type PlaysFound, playsInOrder } from './plays-order';
import { doPlaysJob, type PlaysRule } from './plays-work';
import type { ToldSafety } from './safety';
import { type Play, playsToTell, type WorthyWay } from './worthy-ways';

/** How far a search is: parts and ways looked at, of how many, and what is known so far, the best first. */
export interface PlaysNews {
  readonly done: number;
  readonly of: number;
  readonly plays: readonly Play[];
}

/**
 * Looks for all ways to play a position, one job after the other, and tells how far it is after each:
 * whoever has enough asks no more.
 */
export function* findPlays(
  question: WaysQuestion,
  rule: PlaysRule,
): Generator<PlaysNews, PlaysFound, void> {
  const order = playsInOrder(question, rule);
  const known: WorthyWay[] = [];
  const safeties: ToldSafety[] = [];
  let done = 0;
  let round = order.next([]);
  while (round.done !== true) {
    const { jobs, of } = round.value;
    const results: unknown[] = [];
    for (const job of jobs) {
      const result = doPlaysJob(job);
      results.push(result);
      if (job.name === 'waysRefine') known.push(result as WorthyWay);
      if (job.name === 'safetyRefine') safeties.push(result as ToldSafety);
      if (of !== null)
        yield { done: ++done, of, plays: playsToTell(known, safeties, rule, rule.order) };
    }
    round = order.next(results);
  }
  return round.value;
}
