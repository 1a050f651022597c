import type { ChanceMap } from '../engine/options/chance-map';
import type { Option } from '../engine/options/solve-option';

/** A patch of the map: the best of all it holds, or null where nothing in it goes. */
export interface ChanceCell {
  readonly column: number;
  readonly row: number;
  readonly best: Option | null;
}

/** A map made coarse enough for a thumb to read. */
export interface ChanceGrid {
  /** The sides and speeds at the middle of each column and row. */
  readonly sides: readonly number[];
  readonly speedsMps: readonly number[];
  /** Row by row, the slowest first. */
  readonly rows: readonly (readonly ChanceCell[])[];
}

/** Neighbours put together, along and across. */
const TOGETHER = 2;

/** Puts neighbouring sides and speeds together; side none, in the middle, stays alone. */
export function coarseChances({ sides, speedsMps, best }: ChanceMap): ChanceGrid {
  const columns = aboutMiddle(sides.length);
  const bands = inTurn(speedsMps.length);
  return {
    sides: columns.map((at) => mean(at.map((i) => sides[i] ?? 0))),
    speedsMps: bands.map((at) => mean(at.map((i) => speedsMps[i] ?? 0))),
    rows: bands.map((band, row) =>
      columns.map((places, column) => {
        const options = band.flatMap((i) => places.map((j) => best[i]?.[j] ?? null));
        return { column, row, best: options.reduce(better, null) };
      }),
    ),
  };
}

function better(one: Option | null, other: Option | null): Option | null {
  if (one === null || other === null) return one ?? other;
  return other.chance.share > one.chance.share ? other : one;
}

function inTurn(count: number, from = 0): number[][] {
  return Array.from({ length: Math.ceil(count / TOGETHER) }, (_, at) =>
    Array.from(
      { length: Math.min(TOGETHER, count - at * TOGETHER) },
      (_, i) => from + at * TOGETHER + i,
    ),
  );
}

/** Of an odd count the middle one is a group of its own. */
function aboutMiddle(count: number): number[][] {
  const half = Math.floor(count / 2);
  const middle = count % 2 === 1 ? [[half]] : [];
  return [...inTurn(half), ...middle, ...inTurn(half, count - half)];
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);
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
