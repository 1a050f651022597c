import { cholesky, choleskyInverse } from '../numerics/cholesky';

type Matrix = readonly (readonly number[])[];

/** What is believed near one point, as a parabola has it; and how much weight that has among others. */
export interface PartBelief {
  /** In prior standard deviations. */
  readonly at: readonly number[];
  readonly covariance: Matrix;
  /** Minus the logarithm of its weight, less a constant that all parts share. */
  readonly cost: number;
  /** How much of what is followed it stands for. */
  readonly share: number;
}

/** The inverse of a fit's curvature: the priors alone make that positive definite. */
export function covarianceOf(curvature: Matrix): Matrix {
  return choleskyInverse(factorOf(curvature));
}

/** Half the logarithm of a curvature's determinant. */
export function halfLogOf(curvature: Matrix): number {
  return factorOf(curvature).reduce((sum, row, index) => sum + Math.log(row[index] ?? 1), 0);
}

function factorOf(curvature: Matrix) {
  const factor = cholesky(curvature);
  if (factor === null) throw new RangeError('the curvature of a fit must be positive definite');
  return factor;
}

/** The mean over all parts of something about each. */
export function averageOf(parts: readonly PartBelief[], of: (part: PartBelief) => number): number {
  const least = Math.min(...parts.map(({ cost }) => cost));
  const weights = parts.map(({ cost, share }) => share * Math.exp(least - cost));
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  return parts.reduce((sum, part, index) => sum + ((weights[index] ?? 0) / whole) * of(part), 0);
}

/**
 * How far all unknowns may lie from one point, as a covariance: that within the parts and between
 * them. It counts in how far their mean lies from the point. Nothing is made wider than the prior.
 */
export function spreadAbout(point: readonly number[], parts: readonly PartBelief[]): Matrix {
  const wide = point.map((x, i) =>
    point.map((y, j) =>
      averageOf(
        parts,
        ({ at, covariance }) => (covariance[i]?.[j] ?? 0) + ((at[i] ?? 0) - x) * ((at[j] ?? 0) - y),
      ),
    ),
  );
  const held = point.map((_, i) => 1 / Math.sqrt(Math.max(1, wide[i]?.[i] ?? 1)));
  return wide.map((row, i) => row.map((value, j) => value * (held[i] ?? 1) * (held[j] ?? 1)));
}
