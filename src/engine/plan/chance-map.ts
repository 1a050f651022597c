import { byChance } from './distinct-ways';
import { type OptionGrid, placesOf } from './option-grid';
import type { Option } from './solve-option';

/** Of every side and speed of a grid, the best option over heights and elevations. */
export interface ChanceMap {
  readonly sides: readonly number[];
  readonly speedsMps: readonly number[];
  /** Row by row of one speed each, in the order of the sides; null where nothing goes. */
  readonly best: readonly (readonly (Option | null)[])[];
}

/** @param options of that grid, in any order */
export function chanceMap(grid: OptionGrid, options: readonly Option[]): ChanceMap {
  const { sides, speedsMps } = grid;
  const best = speedsMps.map(() => sides.map((): Option | null => null));
  for (const option of options) {
    if (option.place >= placesOf(grid))
      throw new RangeError(`no place ${option.place} in the grid`);
    const row = best[Math.floor(option.place / sides.length) % speedsMps.length] ?? [];
    const column = option.place % sides.length;
    const former = row[column] ?? null;
    if (former === null || byChance(option, former) < 0) row[column] = option;
  }
  return { sides, speedsMps, best };
}
