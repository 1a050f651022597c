import type { LeastSquaresProblem } from '../../../src/engine/numerics/least-squares';
import { residualProblem } from '../../harness/residual-problem';

/** A problem of the NIST StRD collection for nonlinear regression. */
export interface NistProblem {
  readonly name: string;
  /** Parameters b and a predictor to the response, followed by its derivative by each b. */
  readonly model: (b: readonly number[], x: number, x2: number) => readonly number[];
  readonly y: readonly number[];
  readonly x: readonly number[];
  /** The second predictor, of the one problem that has two. */
  readonly x2?: readonly number[];
  /** Far and near, as NIST gives them. */
  readonly starts: readonly [far: readonly number[], near: readonly number[]];
  readonly certified: readonly number[];
  readonly certifiedSd: readonly number[];
  readonly certifiedSumOfSquares: number;
}

/** The model of two problems: b₁ (1 − e^(−b₂ x)), which rises from nothing towards b₁. */
export const towardsLimit: NistProblem['model'] = ([b1 = 0, b2 = 0], x) => {
  const fall = Math.exp(-b2 * x);
  return [b1 * (1 - fall), 1 - fall, b1 * x * fall];
};

/** Residuals are predicted less measured. */
export function asLeastSquares({ model, y, x, x2 }: NistProblem): LeastSquaresProblem {
  return residualProblem((b) =>
    y.map((measured, row) => {
      const [predicted = Number.NaN, ...slopes] = model(b, x[row] ?? 0, x2?.[row] ?? 0);
      return [predicted - measured, ...slopes];
    }),
  );
}
