import { residualProblem } from '../../../harness/residual-problem';

// Source of all: Moré, Garbow and Hillstrom, ACM Transactions on Mathematical Software 7:17 (1981)
// (from memory).

/** A bent valley; lowest at (1, 1). */
export const rosenbrock = residualProblem(([x = 0, y = 0]) => [
  [10 * (y - x * x), -20 * x, 10],
  [1 - x, -1, 0],
]);

/** Lowest at (3, 0.5). */
export const beale = residualProblem(([x = 0, y = 0]) => [
  [1.5 - x * (1 - y), y - 1, x],
  [2.25 - x * (1 - y ** 2), y ** 2 - 1, 2 * x * y],
  [2.625 - x * (1 - y ** 3), y ** 3 - 1, 3 * x * y ** 2],
]);

/** Two bent valleys tied together; lowest at (1, 1, 1, 1). */
export const wood = residualProblem(([a = 0, b = 0, c = 0, d = 0]) => [
  [10 * (b - a * a), -20 * a, 10, 0, 0],
  [1 - a, -1, 0, 0, 0],
  [Math.sqrt(90) * (d - c * c), 0, 0, -2 * Math.sqrt(90) * c, Math.sqrt(90)],
  [1 - c, 0, 0, -1, 0],
  [Math.sqrt(10) * (b + d - 2), 0, Math.sqrt(10), 0, Math.sqrt(10)],
  [(b - d) / Math.sqrt(10), 0, 1 / Math.sqrt(10), 0, -1 / Math.sqrt(10)],
]);

/** Lowest at the origin, where its curvature has two directions of nothing. */
export const powellSingular = residualProblem(([a = 0, b = 0, c = 0, d = 0]) => [
  [a + 10 * b, 1, 10, 0, 0],
  [Math.sqrt(5) * (c - d), 0, 0, Math.sqrt(5), -Math.sqrt(5)],
  [(b - 2 * c) ** 2, 0, 2 * (b - 2 * c), -4 * (b - 2 * c), 0],
  [Math.sqrt(10) * (a - d) ** 2, 2 * Math.sqrt(10) * (a - d), 0, 0, -2 * Math.sqrt(10) * (a - d)],
]);
