import type { AimMark } from '../units/unit-names';

/**
 * How far right of the leading ball's centre the line of an aim passes, m, measured square to the
 * straight line through that centre.
 * @param aimRad from the straight line, right +
 */
export function aimOffsetM(
  { distanceM, cutRad }: { readonly distanceM: number; readonly cutRad: number },
  ballRadiusM: number,
  lead: AimMark,
  aimRad: number,
): number {
  const tan = Math.tan(aimRad);
  if (lead === 'ghost-ball') return distanceM * tan;
  const beyondM = 2 * ballRadiusM * Math.cos(cutRad);
  return (distanceM + beyondM) * tan - 2 * ballRadiusM * Math.sin(cutRad);
}
