import { DIAMONDS_ACROSS, DIAMONDS_ALONG } from '../table/diamonds';
import type { TableShape } from '../table/table-shape';
import type { Place } from './legal-place';

/**
 * The nearest crossing of two diamonds' lines on the bed, the head spot, centre and foot spot among
 * them, or the place itself where none is near.
 */
export function snapped(place: Place, { lengthM, widthM }: TableShape, withinM: number): Place {
  const near = {
    xM: toLine(place.xM, widthM, DIAMONDS_ACROSS),
    yM: toLine(place.yM, lengthM, DIAMONDS_ALONG),
  };
  return Math.hypot(near.xM - place.xM, near.yM - place.yM) <= withinM ? near : place;
}

/** The nearest line that is not a nose, from the table's middle, m. */
function toLine(atM: number, spanM: number, parts: number): number {
  const most = parts / 2 - 1;
  const line = Math.min(most, Math.max(-most, Math.round((atM * parts) / spanM)));
  // A line of −0 is the middle one.
  return ((line + 0) * spanM) / parts;
}
