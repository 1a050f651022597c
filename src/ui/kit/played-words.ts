import type { KitKnowledge } from '../../engine/fit/kit-knowledge';
import type { KitQuantity } from '../../engine/kit/kit-spread';
import type { ShelfName } from '../../store/records';

/** What the telling figure of each kind hangs on. */
const TELLING: { readonly [S in ShelfName]: KitQuantity } = {
  cues: 'massRatio',
  cloths: 'rollFriction',
  balls: 'ballFriction',
  tables: 'cushionRestitution',
};

/** "measured from 3 shots". */
export function measuredFrom(shots: number): string {
  return `measured from ${shots} ${shots === 1 ? 'shot' : 'shots'}`;
}

/** How much of a change by hand is left once readings have spoken. */
export function handShareWords(
  shelf: ShelfName,
  before: Pick<KitKnowledge, 'spread'>,
  now: Pick<KitKnowledge, 'spread'>,
): string {
  // As a prior's middle moves, what is known after readings moves by the share of its variance left.
  const quantity = TELLING[shelf];
  const share = (now.spread[quantity] / before.spread[quantity]) ** 2;
  const percent = Math.round(100 * Math.min(1, share));
  return `Of a change by hand, readings leave about ${percent} %.`;
}
