import type { Neighbour } from '../../engine/position/neighbours';
import { ballWords } from './table-words';

/** What is farther off than this, m, about a ball's width, is not told. */
const TOLD_M = 0.06;

/** What a ball touches, or else what it lies close to: "frozen to the 4", "2 mm from the cushion". */
export function besideWords(nearestFirst: readonly Neighbour[]): string {
  const frozenTo = nearestFirst.filter(({ isFrozen }) => isFrozen);
  if (frozenTo.length > 0) return `frozen to ${frozenTo.map(nameOf).join(' and ')}`;
  const [nearest] = nearestFirst;
  if (nearest === undefined || nearest.gapM > TOLD_M) return '';
  return `${gapWords(nearest.gapM)} from ${nameOf(nearest)}`;
}

function nameOf({ what }: Neighbour): string {
  return what === 'cushion' ? 'the cushion' : ballWords(what);
}

/** Tenths only where a whole millimetre would say that they touch. */
function gapWords(gapM: number): string {
  const gapMm = gapM * 1000;
  return `${gapMm < 0.95 ? gapMm.toFixed(1) : Math.round(gapMm)} mm`;
}
