import { type PickRule, waysToTell } from './pick-ways';
import type { ToldWay } from './refine-found';
import { type WaysFound, waysInOrder } from './ways-order';
import type { WaysQuestion } from './ways-question';
import { doWaysJob } from './ways-work';

/** How far a search is: parts and ways looked at, of how many, and the ways known so far, the best first. */
export interface WaysNews {
  readonly done: number;
  readonly of: number;
  readonly ways: readonly ToldWay[];
}

/**
 * Looks for all ways to play a position, one job after the other, and tells how far it is after each:
 * whoever has enough asks no more.
 */
export function* findWays(
  question: WaysQuestion,
  rule: PickRule,
): Generator<WaysNews, WaysFound, void> {
  const order = waysInOrder(question, rule);
  const known: ToldWay[] = [];
  let done = 0;
  let round = order.next([]);
  while (round.done !== true) {
    const { jobs, of } = round.value;
    const results: unknown[] = [];
    for (const job of jobs) {
      const result = doWaysJob(job);
      results.push(result);
      if (job.name === 'waysRefine') known.push(result as ToldWay);
      if (of !== null) yield { done: ++done, of, ways: waysToTell(known, rule) };
    }
    round = order.next(results);
  }
  return round.value;
}
