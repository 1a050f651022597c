import { DEFAULT_KIT } from '../../src/engine/kit/kit';
import { TABLE_SIZES } from '../../src/engine/table/pocket-standard';
import type { PlacedBall } from '../../src/engine/table/table-play';

/** Touching balls in a triangle of so many rows, its tip a quarter of a nine-foot table up. */
export function triangle(rows: number): readonly PlacedBall[] {
  const width = 2 * DEFAULT_KIT.ballRadiusM;
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: row + 1 }, (_ball, at) => ({
      xM: (at - row / 2) * width,
      yM: TABLE_SIZES['nine-foot'].lengthM / 4 + (row * width * Math.sqrt(3)) / 2,
    })),
  ).flat();
}
