/** How differences without sign are spread. */
export interface Spread {
  readonly count: number;
  readonly mean: number;
  /** Ninety-nine of a hundred are no larger. */
  readonly p99: number;
  readonly max: number;
}

/** @throws RangeError where a value is not a number: nothing may hide behind it */
export function spreadOf(values: readonly number[]): Spread {
  const sorted = [...values].sort((a, b) => a - b);
  const count = sorted.length;
  const max = sorted.at(-1);
  const p99 = sorted[Math.ceil(0.99 * count) - 1];
  if (max === undefined || p99 === undefined || values.some(Number.isNaN)) {
    throw new RangeError('a spread needs numbers, and nothing else');
  }
  return { count, mean: sorted.reduce((sum, value) => sum + value, 0) / count, p99, max };
}

/**
 * The next of 1, 2 and 5 times a power of ten, as text: coarse enough that the last bits of another
 * machine's sine do not show.
 */
export function roundedUp(value: number): string {
  const power = Math.floor(Math.log10(value));
  const rounded = [1, 2, 5, 10].map((step) => step * 10 ** power).find((step) => step >= value);
  if (rounded === undefined) throw new RangeError(`cannot round ${value} up`);
  const decimals = Math.max(0, -Math.floor(Math.log10(rounded) + 1e-9));
  return decimals > 6 ? rounded.toExponential(0) : rounded.toFixed(decimals);
}
