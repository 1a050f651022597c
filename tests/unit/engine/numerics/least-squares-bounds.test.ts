import { describe, expect, it } from 'vitest';
import { leastSquares } from '../../../../src/engine/numerics/least-squares';
import { residualProblem, watched } from '../../../harness/residual-problem';
import { rosenbrock } from './valleys';

/** Residual ln(x / 3), which means nothing where x is not positive. */
const logOfThird = residualProblem(([x = 0]) => [[Math.log(x / 3), 1 / x]]);

describe('leastSquares within bounds', () => {
  it('ends on a bound that is in the way, at the least sum there', () => {
    // Source: for x at most 0.8 Rosenbrock's valley is lowest at y = x²: (1 − 0.8)² / 2.
    const fit = leastSquares(rosenbrock, [-1.2, 1], {
      min: [-Infinity, -Infinity],
      max: [0.8, Infinity],
    });
    expect(fit.outcome).toBe('converged');
    expect(fit.at[0]).toBe(0.8);
    expect(fit.at[1]).toBeCloseTo(0.64, 9);
    expect(fit.cost).toBeCloseTo(0.02, 9);
    expect(fit.atBound).toEqual([true, false]);
  });

  it('lets go of a bound that it starts on once downhill is inside', () => {
    // y is held on 0.5 until x has passed √0.5, and is 1 at the bottom.
    const { problem, tried } = watched(rosenbrock);
    const fit = leastSquares(problem, [0.1, 0.5], {
      min: [-2, 0.5],
      max: [2, 2],
    });
    expect(tried.slice(0, 2).map(([, y]) => y)).toEqual([0.5, 0.5]);
    expect(tried[1]).not.toEqual(tried[0]);
    expect(fit.outcome).toBe('converged');
    expect(fit.at[0]).toBeCloseTo(1, 9);
    expect(fit.at[1]).toBeCloseTo(1, 9);
    expect(fit.atBound).toEqual([false, false]);
  });

  it('moves the others as they should where one is stopped on its way', () => {
    // By hand: with x at most 2 it is 2, and (2 + y − 10) − (2 − y) + (y − 3) is to be 0.
    const crossed = residualProblem(([x = 0, y = 0]) => [
      [x + y - 10, 1, 1],
      [x - y, 1, -1],
      [y - 3, 0, 1],
    ]);
    const fit = leastSquares(crossed, [0, 0], { min: [0, 0], max: [2, 100] });
    expect(fit.at[0]).toBe(2);
    expect(fit.at[1]).toBeCloseTo(13 / 3, 9);
    expect(fit.outcome).toBe('converged');
  });

  it('moves a start from outside to the nearest point inside first', () => {
    const { problem, tried } = watched(rosenbrock);
    leastSquares(problem, [-5, 9], { min: [-2, -2], max: [2, 2] });
    expect(tried[0]).toEqual([-2, 2]);
  });

  it('keeps a variable whose bounds are one value', () => {
    const fit = leastSquares(rosenbrock, [0, 0], { min: [0.5, -9], max: [0.5, 9] });
    expect(fit.outcome).toBe('converged');
    expect(fit.at[0]).toBe(0.5);
    expect(fit.at[1]).toBeCloseTo(0.25, 9);
    expect(fit.atBound).toEqual([true, false]);
  });

  it('converges in a corner at once where all downhill is outside', () => {
    const away = residualProblem(([x = 0, y = 0]) => [
      [x - 5, 1, 0],
      [y + 5, 0, 1],
    ]);
    const fit = leastSquares(away, [9, -9], { min: [0, 0], max: [1, 1] });
    expect(fit).toMatchObject({ at: [1, 0], outcome: 'converged', rounds: 0 });
    expect(fit.atBound).toEqual([true, true]);
  });

  it('keeps bounds and unpredictable places apart from one another', () => {
    // The bottom at 3 is beyond the bound; from 1.9 the first step would lead beyond it too.
    const fit = leastSquares(logOfThird, [0.001], { min: [-10], max: [2] });
    expect(fit.at).toEqual([2]);
    expect(fit.outcome).toBe('converged');
  });
});
