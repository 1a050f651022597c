import { DIAMONDS_ACROSS, DIAMONDS_ALONG } from '../engine/table/diamonds';
import type { PocketName } from '../engine/table/pocket-shape';
import type { BedSpot } from './table-diamonds';

/** Where a straight line over the bed comes to a rail's nose. */
export interface RailPoint {
  readonly spot: BedSpot;
  readonly rail: 'near' | 'far' | 'left' | 'right';
  /** The end of that rail which is nearer. */
  readonly corner: PocketName;
  /** From that corner along the rail: 0 to 4 on a long rail, to 2 on a short one. */
  readonly diamonds: number;
  /** From where the line began, m. */
  readonly awayM: number;
}

interface BedSize {
  readonly lengthM: number;
  readonly widthM: number;
}

/** @param headingRad over the table: 0 runs along y, right + */
export function railPoint(
  { xM, yM }: BedSpot,
  headingRad: number,
  { lengthM, widthM }: BedSize,
): RailPoint {
  const [right, up] = [Math.sin(headingRad), Math.cos(headingRad)];
  const toSideM = distanceTo(xM, right, widthM / 2);
  const toEndM = distanceTo(yM, up, lengthM / 2);
  const awayM = Math.min(toSideM, toEndM);
  const spot = { xM: xM + awayM * right, yM: yM + awayM * up };
  const side = (toSideM < toEndM ? right : spot.xM) > 0 ? 'right' : 'left';
  const end = (toSideM < toEndM ? spot.yM : up) > 0 ? 'far' : 'near';
  const corner: PocketName = `${end}-${side}`;
  return toSideM < toEndM
    ? { spot, rail: side, corner, diamonds: fromEnd(spot.yM, lengthM, DIAMONDS_ALONG), awayM }
    : { spot, rail: end, corner, diamonds: fromEnd(spot.xM, widthM, DIAMONDS_ACROSS), awayM };
}

/** How far it is to the nose ahead, m. */
function distanceTo(atM: number, share: number, noseM: number): number {
  if (share === 0) return Number.POSITIVE_INFINITY;
  return (Math.sign(share) * noseM - atM) / share;
}

/** Diamonds from the nearer end of a rail. */
function fromEnd(atM: number, spanM: number, diamonds: number): number {
  return ((spanM / 2 - Math.abs(atM)) * diamonds) / spanM;
}
