import { describe, expect, it } from 'vitest';
import {
  type LeastSquaresProblem,
  leastSquares,
} from '../../../../src/engine/numerics/least-squares';
import { type ResidualRow, residualProblem } from '../../../harness/residual-problem';
import { beale, powellSingular, rosenbrock, wood } from './valleys';

/** Residual ln(x / 3), which means nothing where x is not positive. */
const logOfThird = residualProblem(([x = 0]) => [[Math.log(x / 3), 1 / x]]);

describe('leastSquares', () => {
  it('fits a straight line in a few rounds', () => {
    // Worked out by hand: the mean of y, and Σxy/Σx² about the mean of x.
    const line = residualProblem(([a = 0, b = 0]) =>
      [1, 3, 2, 6].map((y, i) => [a + b * (i - 1.5) - y, 1, i - 1.5]),
    );
    const fit = leastSquares(line, [100, -100]);
    expect(fit.outcome).toBe('converged');
    expect(fit.at[0]).toBeCloseTo(3, 8);
    expect(fit.at[1]).toBeCloseTo(1.4, 8);
    expect(2 * fit.cost).toBeCloseTo(4.2, 12);
    expect(fit.rounds).toBeLessThan(10);
  });

  // Source: Moré, Garbow and Hillstrom, ACM Transactions on Mathematical Software 7:17 (1981): starts
  // and least sums, all 0 (from memory).
  it.each([
    ['Rosenbrock’s', rosenbrock, [-1.2, 1], [1, 1]],
    ['Beale’s', beale, [1, 1], [3, 0.5]],
    ['Wood’s', wood, [-3, -1, -3, -1], [1, 1, 1, 1]],
  ])('finds the bottom of %s valley', (_, problem, start, bottom) => {
    const fit = leastSquares(problem, start);
    expect(fit.outcome).toBe('converged');
    bottom.forEach((value, i) => {
      expect(fit.at[i]).toBeCloseTo(value, 9);
    });
  });

  it('finds a bottom at which the curvature degenerates', () => {
    const fit = leastSquares(powellSingular, [3, -1, 0, 1]);
    expect(fit.outcome).toBe('converged');
    expect(Math.hypot(...fit.at)).toBeLessThan(1e-5);
  });

  it('says what the sum is like where it ended', () => {
    const { at, cost, gradient, curvature } = leastSquares(rosenbrock, [-1.2, 1]);
    expect({ cost, gradient, curvature }).toEqual(rosenbrock.curvedAt(at));
    expect(cost).toBe(rosenbrock.costAt(at));
  });

  it('settles for any of many bottoms where variables only count together', () => {
    const together = residualProblem(([x = 0, y = 0]) => [
      [Math.exp(x + y) - 2, Math.exp(x + y), Math.exp(x + y)],
      [x + y, 1, 1],
    ]);
    const fit = leastSquares(together, [3, 1]);
    expect(fit.outcome).toBe('converged');
    // Where the derivative by the sum of the variables is nothing.
    const [x = 0, y = 0] = fit.at;
    expect((Math.exp(x + y) - 2) * Math.exp(x + y) + x + y).toBeCloseTo(0, 7);
  });

  it('leaves alone a variable that changes nothing', () => {
    const fit = leastSquares(rosenbrock, [-1.2, 1, 7]);
    expect(fit.outcome).toBe('converged');
    expect(fit.at[0]).toBeCloseTo(1, 9);
    expect(fit.at[2]).toBe(7);
  });

  it('moves a variable that starts to count only on the way', () => {
    // y counts where x is past 1 only; the bottom is at (2, 3).
    const late = residualProblem(([x = 0, y = 0]): ResidualRow[] => [
      [x - 2, 1, 0],
      x > 1 ? [(x - 1) * (y - 3), y - 3, x - 1] : [0, 0, 0],
    ]);
    const fit = leastSquares(late, [0, 0]);
    expect(fit.outcome).toBe('converged');
    expect(fit.at[0]).toBeCloseTo(2, 9);
    expect(fit.at[1]).toBeCloseTo(3, 9);
  });

  it('takes no step to where there is no prediction', () => {
    for (const nothing of [Infinity, Number.NaN]) {
      let refused = 0;
      const walled: LeastSquaresProblem = {
        ...logOfThird,
        costAt: (at) => {
          const [x = 0] = at;
          if (x > 0) return logOfThird.costAt(at);
          refused++;
          return nothing;
        },
      };
      // The first Gauss-Newton step from 20 leads to −18.
      const fit = leastSquares(walled, [20]);
      expect(refused).toBeGreaterThan(0);
      expect(fit.outcome).toBe('converged');
      expect(fit.at[0]).toBeCloseTo(3, 9);
    }
  });

  it('takes no step to where gradient or curvature is not finite', () => {
    const blind: LeastSquaresProblem = {
      costAt: rosenbrock.costAt,
      curvedAt: ([x = 0, y = 0]) => {
        const curved = rosenbrock.curvedAt([x, y]);
        return x > 0.5 ? { ...curved, gradient: [Number.NaN, 0] } : curved;
      },
    };
    const fit = leastSquares(blind, [-1.2, 1]);
    expect(fit.outcome).toBe('stuck');
    expect(fit.at[0]).toBeLessThanOrEqual(0.5);
    expect(fit.gradient.every(Number.isFinite)).toBe(true);
  });

  it('is stuck, and no lower than it can vouch for, where the start has no prediction', () => {
    const fit = leastSquares(logOfThird, [-1]);
    expect(fit).toMatchObject({ at: [-1], cost: Infinity, outcome: 'stuck', rounds: 0 });
    expect([fit.gradient, fit.curvature]).toEqual([[0], [[0]]]);
  });

  it('is stuck where the gradient says down and every step leads up', () => {
    const lying: LeastSquaresProblem = {
      costAt: ([x = 0]) => 1 + Math.abs(x),
      curvedAt: ([x = 0]) => ({ cost: 1 + Math.abs(x), gradient: [-1], curvature: [[1]] }),
    };
    const fit = leastSquares(lying, [0]);
    expect(fit.outcome).toBe('stuck');
    expect(fit.at).toEqual([0]);
    expect(fit.rounds).toBeLessThan(30);
  });

  it('is stuck where a slope comes without a curvature', () => {
    const slope: LeastSquaresProblem = {
      costAt: ([x = 0]) => 10 + x,
      curvedAt: ([x = 0]) => ({ cost: 10 + x, gradient: [1], curvature: [[0]] }),
    };
    expect(leastSquares(slope, [0])).toMatchObject({ at: [0], outcome: 'stuck' });
  });

  it('stops at a limit of rounds, lower than it started, and says so', () => {
    const fit = leastSquares(rosenbrock, [-1.2, 1], undefined, { maxRounds: 5 });
    expect(fit.outcome).toBe('round-limit');
    expect(fit.rounds).toBe(5);
    expect(fit.cost).toBeLessThan(rosenbrock.costAt([-1.2, 1]));
  });

  it('gets to the bottom of what is rounded roughly, and of a gradient by coarse differences', () => {
    const round = (value: number) => Math.round(value * 1e6) / 1e6;
    const offset = (at: readonly number[]) => 1 + rosenbrock.costAt(at);
    const rough: LeastSquaresProblem = {
      costAt: (at) => round(offset(at)),
      curvedAt: (at) => {
        const costNear = (i: number, by: number) =>
          rosenbrock.costAt(at.map((value, j) => (i === j ? value + by : value)));
        const gradient = at.map((_, i) => (costNear(i, 1e-3) - costNear(i, -1e-3)) / 2e-3);
        return { ...rosenbrock.curvedAt(at), cost: offset(at), gradient };
      },
    };
    const fit = leastSquares(rough, [-1.2, 1]);
    expect(fit.outcome).toBe('converged');
    expect(fit.at[0]).toBeCloseTo(1, 2);
    expect(fit.at[1]).toBeCloseTo(1, 2);
  });

  it('gives the same answer again, and leaves what it was given alone', () => {
    const start = Object.freeze([-1.2, 1]);
    const min = Object.freeze([-2, -2]);
    const max = Object.freeze([0.8, 2]);
    const fit = leastSquares(rosenbrock, start, { min, max });
    expect(leastSquares(rosenbrock, start, { min, max })).toEqual(fit);
    expect(start).toEqual([-1.2, 1]);
  });

  it('has nothing to do for no variables', () => {
    const constant = residualProblem(() => [[2]]);
    expect(leastSquares(constant, [])).toMatchObject({ cost: 2, outcome: 'converged', rounds: 0 });
  });

  it('refuses a start that is not finite', () => {
    for (const start of [Number.NaN, Infinity]) {
      expect(() => leastSquares(logOfThird, [start])).toThrow(RangeError);
    }
  });

  it.each([
    ['too few', [], [1]],
    ['too many', [0], [1, 1]],
    ['crossed', [2], [1]],
    ['not a number', [Number.NaN], [1]],
    ['beyond every number', [Infinity], [Infinity]],
  ])('refuses bounds that are %s', (_, min, max) => {
    expect(() => leastSquares(logOfThird, [1], { min, max })).toThrow(RangeError);
  });
});
