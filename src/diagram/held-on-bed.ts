import { heldWithin } from '../engine/numerics/range';
import type { BedSpot } from './table-diamonds';

/** Where a ball's centre may lie, m, as near as can be to a spot that may lie beyond. */
export function heldOnBed(
  { xM, yM }: BedSpot,
  { lengthM, widthM }: { readonly lengthM: number; readonly widthM: number },
  ballRadiusM: number,
): BedSpot {
  const held = (value: number, acrossM: number) => {
    const mostM = acrossM / 2 - ballRadiusM;
    return heldWithin({ min: -mostM, max: mostM }, value);
  };
  return { xM: held(xM, widthM), yM: held(yM, lengthM) };
}
