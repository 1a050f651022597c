/**
 * Cholesky's lower triangular factor L of a symmetric positive-definite matrix, A = LLᵀ. Row i holds
 * its entries 0 to i; the zeros above the diagonal are left out.
 */
export type CholeskyFactor = readonly (readonly number[])[];

/**
 * The factor of a symmetric matrix, of which the lower triangle is read; null where the matrix is
 * not positive definite, or not so beyond the rounding of its diagonal.
 *
 * LLᵀ is A to a few ε of its diagonal, whatever its condition. Source: Golub and Van Loan, Matrix
 * Computations, chapter 4 (from memory).
 */
export function cholesky(matrix: readonly (readonly number[])[]): CholeskyFactor | null {
  const factor: number[][] = [];
  for (const [i, given] of matrix.entries()) {
    const row: number[] = [];
    for (const [j, above] of factor.entries()) {
      row.push(((given[j] ?? Number.NaN) - partialDot(row, above)) / (above[j] ?? Number.NaN));
    }
    const diagonal = given[i] ?? Number.NaN;
    const left = diagonal - partialDot(row, row);
    if (!(left > Number.EPSILON * diagonal)) return null;
    row.push(Math.sqrt(left));
    factor.push(row);
  }
  return factor;
}

/** Solves Ax = b by the factor of A. */
export function choleskySolve(factor: CholeskyFactor, right: readonly number[]): number[] {
  const x = forward(factor, right);
  for (let i = factor.length - 1; i >= 0; i--) {
    const row = factor[i] ?? [];
    const solved = (x[i] ?? 0) / (row[i] ?? 0);
    x[i] = solved;
    for (let j = 0; j < i; j++) x[j] = (x[j] ?? 0) - solved * (row[j] ?? 0);
  }
  return x;
}

/**
 * A⁻¹ by the factor of A, exactly symmetric. For where the inverse itself is wanted, as a covariance
 * is; to solve with A, use {@link choleskySolve}.
 */
export function choleskyInverse(factor: CholeskyFactor): number[][] {
  // A⁻¹ = L⁻ᵀL⁻¹: its entries are products of the columns of L⁻¹.
  const columns = factor.map((_, i) =>
    forward(
      factor,
      factor.map((_, j) => (i === j ? 1 : 0)),
    ),
  );
  return columns.map((one) => columns.map((other) => partialDot(one, other)));
}

/** Solves Lx = b. */
function forward(factor: CholeskyFactor, right: readonly number[]): number[] {
  const x: number[] = [];
  for (const [i, row] of factor.entries()) {
    x.push(((right[i] ?? 0) - partialDot(x, row)) / (row[i] ?? 0));
  }
  return x;
}

/** Product of two vectors as far as the first one goes. */
function partialDot(first: readonly number[], second: readonly number[]): number {
  return first.reduce((sum, value, index) => sum + value * (second[index] ?? 0), 0);
}
