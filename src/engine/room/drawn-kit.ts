import type { Kit } from '../kit/kit';
import {
  KIT_QUANTITIES,
  type KitCorrelation,
  type KitQuantity,
  type KitSpread,
  kitMoved,
} from '../kit/kit-spread';
import { cholesky } from '../numerics/cholesky';
import type { Normal } from './drawn-stroke';

/** Speed, sideways tip, height, elevation, and one that the caller uses; then the kit. */
const FIRST_DIMENSIONS = 5;

/** How independent draws make up those of the sampled quantities: rows of a Cholesky factor. */
export type Ties = readonly (readonly number[])[];

/** Null where the quantities are independent. */
export function tiesOf(
  sampled: readonly KitQuantity[],
  correlation: KitCorrelation | undefined,
): Ties | null {
  if (correlation === undefined) return null;
  const at = (quantity: KitQuantity) => KIT_QUANTITIES.indexOf(quantity);
  return cholesky(sampled.map((one) => sampled.map((two) => correlation[at(one)]?.[at(two)] ?? 0)));
}

/**
 * A kit as it may be.
 *
 * @param sampled the quantities that are drawn; tilts are drawn like the others where they are among them
 */
export function drawKit(
  known: Kit,
  spread: KitSpread,
  sampled: readonly KitQuantity[],
  ties: Ties | null,
  normal: Normal,
): Kit {
  let kit = known;
  const alone = (index: number) => normal(FIRST_DIMENSIONS + index);
  sampled.forEach((quantity, index) => {
    if (spread[quantity] === 0) return;
    const tied = ties?.[index]?.reduce((sum, share, from) => sum + share * alone(from), 0);
    kit = kitMoved(kit, spread, quantity, tied ?? alone(index));
  });
  return kit;
}
