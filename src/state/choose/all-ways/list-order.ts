import { worthOf } from '../../../engine/plan/worth-of';
import type { WaysOrder } from '../../../engine/worth/worthy-ways';
import type { ShownWay } from './shown-way';

/**
 * What the list on screen is ordered by: worth; how often a ball goes, whatever becomes of the cue ball; or
 * how often it goes and the cue ball stops in the zone.
 */
export type ListOrder = WaysOrder | 'zone';

/** What a list is ordered by, 0 to 1; of a safety, where it is not worth, −1: nothing goes. */
export function figureOf({ told }: ShownWay, order: ListOrder): number {
  if (order === 'worth') return told.worth.worth;
  if ('struck' in told) return -1;
  return order === 'zone' ? worthOf(told) : told.chance;
}

/** Ways that came by worth, in another order if that is asked for: safeties last. */
export function inOrder(ways: readonly ShownWay[], order: ListOrder): readonly ShownWay[] {
  if (order === 'worth') return ways;
  return [...ways].sort((a, b) => figureOf(b, order) - figureOf(a, order));
}
