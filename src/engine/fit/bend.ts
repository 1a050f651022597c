import type { AtStrays } from './shot-evidence';
import type { Strays } from './shot-residuals';

/** A reading that straying takes away bends without end; this will do for it. */
const WITHOUT_END = 3;

/**
 * How sharply readings bend within a standard deviation of the stroke's strays: the change of their
 * slope over the slope, 0 for straight ones, along the strays that move each most. Where a ball may
 * or may not yet roll as it is met, a reading hangs on the stroke in one way or in another, and
 * straight lines make it tell more than it does.
 *
 * @param residuals those at the strays
 * @param perStray the slopes there
 */
export function bendOf(
  at: AtStrays,
  strays: Strays,
  residuals: readonly number[],
  perStray: readonly (readonly number[])[],
): number {
  const bends = perStray.map((slopes, row) => {
    const length = Math.hypot(...slopes);
    if (!(length > 0)) return 0;
    const [less, more] = [-1, 1].map(
      (side) => at(strays.map((stray, k) => stray + (side * (slopes[k] ?? 0)) / length))?.[row],
    );
    if (less === undefined || more === undefined) return WITHOUT_END;
    const change = Math.abs(less + more - 2 * (residuals[row] ?? 0));
    return Math.min(WITHOUT_END, change / Math.max(1, Math.abs(more - less) / 2));
  });
  return Math.max(0, ...bends);
}
