import { degreesOf } from './angle-degrees';

export type ElevationWord =
  | 'level'
  | 'nearly level'
  | 'slightly raised'
  | 'over a rail'
  | 'raised'
  | 'steep';

/**
 * Upper bounds in degrees (common practice, no source): 2-3° is as level as a cue goes on an open
 * table, 5-10° what a rail under it makes. A bound belongs to the lower word.
 */
const UPPER_BOUNDS: readonly (readonly [number, ElevationWord])[] = [
  [0, 'level'],
  [3, 'nearly level'],
  [4.5, 'slightly raised'],
  [10, 'over a rail'],
  [30, 'raised'],
];

/** A bound typed in degrees must not be missed by what conversion leaves. */
const ROUNDING_DEG = 1e-9;

/** What players call the height of the butt. */
export function elevationWord(elevationRad: number): ElevationWord {
  const elevationDeg = degreesOf(elevationRad) - ROUNDING_DEG;
  return UPPER_BOUNDS.find(([boundDeg]) => elevationDeg <= boundDeg)?.[1] ?? 'steep';
}
