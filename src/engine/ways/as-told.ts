import { Chains } from '../goal/chains';
import type { Goal } from '../goal/goal';
import { isSameVia } from '../goal/kind-of-via';
import type { TablePlay } from '../table/table-play';
import type { WaysAsked } from './ways-question';

/** Whether what led to the fall of a way's ball is just what the way says, in order. */
export function goesAsTold(
  { laid }: Pick<WaysAsked, 'laid'>,
  goal: Goal,
  { events }: TablePlay,
): boolean {
  const chains = new Chains(laid.names);
  const number = laid.names.indexOf(goal.ball);
  for (const event of events) {
    if (event.kind === 'pocketed' && event.ball === number) {
      return event.pocket === goal.pocket && isSameVia(chains.viaOf(number) ?? [], goal.via);
    }
    chains.take(event);
  }
  return false;
}

/** Whether the ball that is touched first may be. */
export function isLegalHit(
  { laid, first }: Pick<WaysAsked, 'laid' | 'first'>,
  { events }: TablePlay,
): boolean {
  const hit = events.find((event) => event.kind === 'hits-ball' && event.ball === 0);
  const name = hit?.kind === 'hits-ball' ? laid.names[hit.other] : undefined;
  return typeof name === 'number' && first.includes(name);
}
