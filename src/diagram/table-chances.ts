import type { ChanceMap } from '../engine/plan/chance-map';
import type { Option } from '../engine/plan/solve-option';

/** One stroke's place on the map: the best of its side and speed, or null where nothing goes. */
export interface ChanceCell {
  readonly column: number;
  readonly row: number;
  readonly best: Option | null;
}

/** A map made coarse enough for a thumb to read. */
export interface ChanceGrid {
  /** The very sides and speeds of the cells. */
  readonly sides: readonly number[];
  readonly speedsMps: readonly number[];
  /** Row by row, the slowest first. */
  readonly rows: readonly (readonly ChanceCell[])[];
}

/**
 * One of every two sides, the middle one among them, and one of every two speeds. None is put
 * together with its neighbours, so that axis, cell and stroke are told by the same figures.
 */
export function coarseChances({ sides, speedsMps, best }: ChanceMap): ChanceGrid {
  const columns = everyOther(sides.length, Math.floor(sides.length / 2) % 2);
  const bands = everyOther(speedsMps.length, 0);
  return {
    sides: columns.map((i) => sides[i] ?? 0),
    speedsMps: bands.map((i) => speedsMps[i] ?? 0),
    rows: bands.map((i, row) =>
      columns.map((j, column) => ({ column, row, best: best[i]?.[j] ?? null })),
    ),
  };
}

function everyOther(count: number, first: number): readonly number[] {
  return Array.from({ length: Math.ceil((count - first) / 2) }, (_, at) => first + 2 * at);
}

/** The cell next to another, kept within the grid. */
export function cellBeside(
  { rows }: ChanceGrid,
  { column, row }: Pick<ChanceCell, 'column' | 'row'>,
  right: number,
  up: number,
): ChanceCell | null {
  const nextRow = Math.min(rows.length - 1, Math.max(0, row + up));
  const cells = rows[nextRow] ?? [];
  return cells[Math.min(cells.length - 1, Math.max(0, column + right))] ?? null;
}

/** The best cell of all; null where nothing goes. */
export function bestCell({ rows }: ChanceGrid): ChanceCell | null {
  return rows.flat().reduce<ChanceCell | null>((found, cell) => {
    if (cell.best === null) return found;
    return found?.best && found.best.chance.share >= cell.best.chance.share ? found : cell;
  }, null);
}
