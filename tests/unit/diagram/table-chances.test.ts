import { describe, expect, it } from 'vitest';
import { bestCell, cellBeside, coarseChances } from '../../../src/diagram/table-chances';
import type { ChanceMap } from '../../../src/engine/plan/chance-map';
import type { Option } from '../../../src/engine/plan/solve-option';

const SIDES = [-0.4, -0.3, -0.2, -0.1, 0, 0.1, 0.2, 0.3, 0.4];
const SPEEDS = [1, 2, 3, 4];
const SDS = { direction: 1, side: 0, height: 0, elevation: 0, speed: 0, kit: 0 };

/** An invented option that goes as often as said. */
function option(side: number, speedMps: number, share: number): Option {
  const stroke = { aimRad: 0, side, height: 0, elevationRad: 0.05, speedMps };
  return { place: 0, stroke, chance: { share, sds: SDS } };
}

/** Goes best at side 0.4 and 2 m/s; not at all at 4 m/s. */
const MAP: ChanceMap = {
  sides: SIDES,
  speedsMps: SPEEDS,
  best: SPEEDS.map((speedMps) =>
    SIDES.map((side) =>
      speedMps === 4
        ? null
        : option(side, speedMps, 0.9 - Math.abs(side - 0.4) - Math.abs(speedMps - 2) / 4),
    ),
  ),
};

describe('a map of chances for a thumb', () => {
  const grid = coarseChances(MAP);

  it('takes every other side and speed, no side among them', () => {
    expect(grid.sides).toEqual([-0.4, -0.2, 0, 0.2, 0.4]);
    expect(grid.speedsMps).toEqual([1, 3]);
    const seventeen = { ...MAP, sides: Array.from({ length: 17 }, (_, at) => at - 8) };
    expect(coarseChances(seventeen).sides).toEqual([-8, -6, -4, -2, 0, 2, 4, 6, 8]);
    const seven = { ...MAP, sides: Array.from({ length: 7 }, (_, at) => at - 3) };
    expect(coarseChances(seven).sides).toEqual([-2, 0, 2]);
  });

  it('tells in each cell of just the stroke that its axes name', () => {
    for (const { column, row, best } of grid.rows.flat()) {
      expect(best?.stroke.side).toBe(grid.sides[column]);
      expect(best?.stroke.speedMps).toBe(grid.speedsMps[row]);
    }
  });

  it('knows its best cell', () => {
    expect(bestCell(grid)).toMatchObject({ column: 4, row: 0 });
  });

  it('has no best cell where nothing goes', () => {
    const nothing = { ...MAP, best: MAP.best.map((row) => row.map(() => null)) };
    expect(bestCell(coarseChances(nothing))).toBeNull();
  });

  it('is walked cell by cell and not left', () => {
    const corner = { column: 4, row: 1 };
    expect(cellBeside(grid, corner, -1, 0)).toMatchObject({ column: 3, row: 1 });
    expect(cellBeside(grid, corner, 1, 1)).toMatchObject(corner);
    expect(cellBeside(grid, corner, 0, -1)).toMatchObject({ column: 4, row: 0 });
  });
});
