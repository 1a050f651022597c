/** The value below which a share of the values lie, of [0, 1); NaN where there are none. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(share * sorted.length)] ?? Number.NaN;
}

/** The middle value; of an even number, the upper of the two. */
export const median = (values: readonly number[]): number => quantile(values, 0.5);
