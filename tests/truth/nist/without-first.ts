import type { Curved, LeastSquaresProblem } from '../../../src/engine/numerics/least-squares';

/**
 * The same problem in all variables but the first, which enters linearly and is always as good as it
 * can be: normal equations with a variable eliminated, after Golub and Pereyra, SIAM Journal on
 * Numerical Analysis 10:413 (1973) (from memory).
 */
export function withoutFirst(problem: LeastSquaresProblem): LeastSquaresProblem {
  const whole = (others: readonly number[]) => [bestFirst(problem, others), ...others];
  return {
    costAt: (others) => problem.costAt(whole(others)),
    curvedAt: (others) => eliminated(problem.curvedAt(whole(others))),
  };
}

/** A parabola's lowest point is one Newton step away, from wherever. */
export function bestFirst({ curvedAt }: LeastSquaresProblem, others: readonly number[]): number {
  const { gradient, curvature } = curvedAt([0, ...others]);
  return -(gradient[0] ?? 0) / (curvature[0]?.[0] ?? 0);
}

/** What is left of the curvature once the first variable follows: its Schur complement. */
function eliminated({ cost, gradient, curvature }: Curved): Curved {
  const [[own = 0, ...ties] = [], ...rows] = curvature;
  return {
    cost,
    gradient: gradient.slice(1),
    curvature: rows.map((row, i) =>
      row.slice(1).map((value, j) => value - ((ties[i] ?? 0) * (ties[j] ?? 0)) / own),
    ),
  };
}
