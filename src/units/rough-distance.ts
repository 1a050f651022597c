import { DISTANCE_UNITS, distanceInUnit } from './distance-unit';
import { formatQuantity } from './format-number';
import type { DistanceUnit } from './unit-names';

/** As fine as a size deserves that nobody measures: a centimetre or two. */
const DECIMALS: Readonly<Record<DistanceUnit, number>> = {
  m: 2,
  cm: 0,
  ft: 1,
  in: 0,
  diamonds: 1,
  'table-lengths': 2,
};

/**
 * About how long something is: "0.36 m", "14 in", "1.1 diamonds".
 * @param tableLengthM nose to nose, of the table in play
 */
export function roughDistance(lengthM: number, unit: DistanceUnit, tableLengthM: number): string {
  return formatQuantity(distanceInUnit(lengthM, unit, tableLengthM), {
    ...DISTANCE_UNITS[unit],
    decimals: DECIMALS[unit],
    eighths: false,
  });
}
