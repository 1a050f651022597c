import type { BedSlope } from '../engine/kit/kit';
import { BED_SLOPE_RANGE } from '../engine/kit/kit-ranges';
import { type Mend, mendNumber, mendObject } from './mend';
import { mendNamed } from './parse-named';
import { TABLE_RANGES } from './record-ranges';
import type { Table } from './records';

/** A nine-foot table, nose to nose (WPA equipment specification). */
const NINE_FOOT = { lengthM: 2.54, widthM: 1.27 } as const;

/** Mends a table that already has an id. */
export const mendTable: Mend<Table> = mendObject<Table>({
  ...mendNamed('Table without a name'),
  lengthM: mendNumber(TABLE_RANGES.lengthM, NINE_FOOT.lengthM),
  widthM: mendNumber(TABLE_RANGES.widthM, NINE_FOOT.widthM),
  bedSlope: mendObject<BedSlope>({
    alongM_per_M: mendNumber(BED_SLOPE_RANGE, 0),
    rightM_per_M: mendNumber(BED_SLOPE_RANGE, 0),
  }),
});
