import type { Zone } from '../../store/saved-position';

/** Radius of a new zone, m: about a ball's width short of a diamond on a large table. */
export const DEFAULT_ZONE_M = 0.25;
const LEAST_M = 0.05;
const MOST_M = 0.6;
const STEP_M = 0.05;

/** A zone a step larger or smaller, within what makes sense. */
export function resizedZone(zone: Zone, towards: 1 | -1): Zone {
  const radiusM = Math.min(MOST_M, Math.max(LEAST_M, zone.radiusM + towards * STEP_M));
  return { ...zone, radiusM };
}

/** A zone moved, its middle kept on the bed. */
export function movedZone(
  zone: Zone,
  { rightM, upM }: { readonly rightM: number; readonly upM: number },
  { lengthM, widthM }: { readonly lengthM: number; readonly widthM: number },
): Zone {
  return {
    ...zone,
    xM: kept(zone.xM + rightM, widthM / 2),
    yM: kept(zone.yM + upM, lengthM / 2),
  };
}

function kept(value: number, mostM: number): number {
  return Math.min(mostM, Math.max(-mostM, value));
}
