import { worthOf } from '../../../engine/plan/worth-of';
import type { WaysOrder } from '../../../engine/worth/worthy-ways';
import { isSafety, type ShownPot, type ShownWay } from './shown-way';

/**
 * What the list on screen is ordered by: worth; how often a ball goes, whatever becomes of the cue ball; or
 * how often it goes and the cue ball stops in the zone.
 */
export type ListOrder = WaysOrder | 'zone';

/** How often a way does what the list is ordered by; by worth, how often it goes. */
export function orderedShare({ told }: ShownPot, order: ListOrder): number {
  return order === 'zone' ? worthOf(told) : told.chance;
}

/** Ways that came by worth, in another order if that is asked for: safeties last, nothing goes. */
export function inOrder(ways: readonly ShownWay[], order: ListOrder): readonly ShownWay[] {
  if (order === 'worth') return ways;
  const share = (way: ShownWay) => (isSafety(way) ? -1 : orderedShare(way, order));
  return [...ways].sort((a, b) => share(b) - share(a));
}
