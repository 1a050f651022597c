import { heldWithin } from '../engine/numerics/range';
import { TABLE_RANGES, WPA_POCKETS } from '../engine/table/pocket-standard';
import { type TableShape, tableShape } from '../engine/table/table-shape';
import type { Table } from '../store/records';

/**
 * A table, with pockets as on any pool table. A record may tell of a toy: the smallest table that takes
 * such pockets stands for it.
 */
export function shapeOf({ lengthM, widthM }: Pick<Table, 'lengthM' | 'widthM'>): TableShape {
  return tableShape(
    heldWithin(TABLE_RANGES.lengthM, lengthM),
    heldWithin(TABLE_RANGES.widthM, widthM),
    WPA_POCKETS,
  );
}
