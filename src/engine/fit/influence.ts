import { dot } from '../numerics/dot';
import type { Fit } from './fit-kit';
import { changePerUnknown } from './fit-problem';
import { type AtStrays, readingCovariance, slopesPerStray } from './shot-evidence';
import { NO_STRAYS, type ShotResiduals, type Strays, withAt } from './shot-residuals';

type Matrix = readonly (readonly number[])[];

/** How a shot's readings hang on the unknowns, over all of them, and on the strays. */
export interface Influence {
  readonly perUnknown: Matrix;
  readonly perStray: Matrix;
  /** How much wider than straight lines say the readings are, squared. */
  readonly width: number;
}

/** @returns null where the kit would leave nothing to read */
export function influenceAt(shot: ShotResiduals, unknowns: readonly number[]): Influence | null {
  const strays = NO_STRAYS;
  const residuals = shot.at(unknowns, strays);
  if (residuals === null) return null;
  const columns = changePerUnknown(shot, unknowns, { strays, residuals });
  const none = unknowns.map(() => 0);
  const perUnknown = residuals.map((_, row) =>
    shot.touches.reduce<readonly number[]>(
      (sum, index, at) => withAt(sum, index, columns[at]?.[row] ?? 0),
      none,
    ),
  );
  const atStrays = (moved: Strays) => shot.at(unknowns, moved);
  const perStray = slopesPerStray(atStrays, strays, residuals);
  return { perUnknown, perStray, width: 1 + bendOf(atStrays, strays, residuals, perStray) ** 2 };
}

/**
 * The covariance of readings not yet taken, V + HCH', in squares of their own errors: V is what
 * strays and reading errors make, HCH' what is not known of the unknowns.
 */
export function spreadAhead({ perUnknown, perStray, width }: Influence, fit: Fit): Matrix {
  const tied = perUnknown.map((row) => fit.covariance.map((line) => dot(line, row)));
  const stretch2 = fit.stretch * fit.stretch * width;
  return readingCovariance(perStray).map((line, i) =>
    line.map((value, j) => stretch2 * value + dot(tied[i] ?? [], perUnknown[j] ?? [])),
  );
}

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
