import { type OptionGrid, placesOf, strokeAt } from './option-grid';
import { type Option, type OptionQuestion, solveOption, taskOf } from './solve-option';

/** A run of places of a grid. */
export interface Stretch {
  readonly from: number;
  /** Not counted itself. */
  readonly to: number;
}

/**
 * Solves the options of a stretch of the grid, in order. Stretches put together are the whole, by
 * however many hands and in whatever order they were done.
 */
export function sweepOptions(
  question: OptionQuestion,
  grid: OptionGrid,
  { from, to }: Stretch,
): readonly Option[] {
  const options: Option[] = [];
  const task = taskOf(question);
  for (let place = from; place < Math.min(to, placesOf(grid)); place++) {
    const stroke = strokeAt(grid, place);
    const option = stroke && solveOption(question, task, stroke, place);
    if (option) options.push(option);
  }
  return options;
}

/**
 * The grid cut into stretches of one height and elevation each: every one fills the whole of a map
 * over side and speed, and the likeliest strokes come first.
 */
export function stretchesOf(grid: OptionGrid): readonly Stretch[] {
  const size = grid.sides.length * grid.speedsMps.length;
  return Array.from({ length: placesOf(grid) / size }, (_, at) => ({
    from: at * size,
    to: (at + 1) * size,
  }));
}
