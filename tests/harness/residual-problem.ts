import type { Curved, LeastSquaresProblem } from '../../src/engine/numerics/least-squares';

/** A residual, and its derivatives by each of the variables. */
export type ResidualRow = readonly [number, ...number[]];

/** The sum of squares of residuals, stated by its normal equations. */
export function residualProblem(
  rowsAt: (at: readonly number[]) => readonly ResidualRow[],
): LeastSquaresProblem {
  return {
    costAt: (at) => halfSumOfSquares(rowsAt(at)),
    curvedAt: (at) => normalEquations(rowsAt(at), at.length),
  };
}

function halfSumOfSquares(rows: readonly ResidualRow[]): number {
  return rows.reduce((sum, [residual]) => sum + residual ** 2 / 2, 0);
}

function normalEquations(rows: readonly ResidualRow[], size: number): Curved {
  const each = Array.from({ length: size }, (_, i) => i);
  const sum = (of: (row: ResidualRow) => number) => rows.reduce((all, row) => all + of(row), 0);
  return {
    cost: halfSumOfSquares(rows),
    gradient: each.map((i) => sum((row) => row[0] * (row[i + 1] ?? 0))),
    curvature: each.map((i) =>
      each.map((j) => sum((row) => (row[i + 1] ?? 0) * (row[j + 1] ?? 0))),
    ),
  };
}

/** The same problem, and where it has been looked at. */
export function watched(problem: LeastSquaresProblem) {
  const tried: (readonly number[])[] = [];
  const costAt = (at: readonly number[]) => {
    tried.push(at);
    return problem.costAt(at);
  };
  return { problem: { ...problem, costAt }, tried };
}
