import { heldWithin, type Range } from '../engine/numerics/range';

/** How far from a multiple of the step, in steps, still counts as being on it. */
const ON_GRID = 1e-6;

/**
 * The next multiple of `step` beyond `value`, upwards for +1 and downwards for −1, held within
 * `range`. Multiples, so that nudging lands on figures people say: 3.62 diamonds goes to 3⅝.
 */
export function nudge(value: number, step: number, towards: 1 | -1, range: Range): number {
  const steps = value / step;
  const next = towards === 1 ? Math.floor(steps + ON_GRID) + 1 : Math.ceil(steps - ON_GRID) - 1;
  const landed = Number((next * step).toPrecision(12));
  return heldWithin(range, landed === 0 ? 0 : landed);
}
