import { type LevenbergMarquardtOptions, levenbergMarquardt } from 'ml-levenberg-marquardt';
import { describe, expect, it } from 'vitest';
import { type Bounds, leastSquares } from '../../src/engine/numerics/least-squares';
import { HIGHER } from './nist/higher';
import { LOWER } from './nist/lower';
import { asLeastSquares, type NistProblem } from './nist/nist-problem';

/** Digits to which both must agree. The fewest measured: 8.0. */
const DIGITS = 7;

const PROBLEMS = [...LOWER, ...HIGHER];

/** Those the library finds from the near start to more digits than are asked for here. */
const NEAR = [
  'Misra1a',
  'Misra1b',
  'Chwirut2',
  'DanWood',
  'Thurber',
  'MGH10',
  'BoxBOD',
  'Rat42',
  'Rat43',
  'Eckerle4',
];

function problemNamed(wanted: string): NistProblem {
  const found = PROBLEMS.find(({ name }) => name === wanted);
  if (found === undefined) throw new RangeError(`no problem is named ${wanted}`);
  return found;
}

/** The library's fit from the near start. It does not say whether it converged: it goes on to its limit. */
function byLibrary(
  { model, x, y, starts }: NistProblem,
  options: Partial<LevenbergMarquardtOptions> = {},
) {
  return levenbergMarquardt({ x, y }, (b) => (at) => model(b, at, 0)[0] ?? Number.NaN, {
    initialValues: starts[1],
    jacobianFunction: (b) => (at) => model(b, at, 0).slice(1),
    maxIterations: 500,
    errorTolerance: 1e-15,
    ...options,
  });
}

/** The same problem with one parameter held, and left out of what is sought. */
function held(problem: NistProblem, index: number, value: number): NistProblem {
  const without = (all: readonly number[]) => all.filter((_, i) => i !== index);
  const whole = (others: readonly number[]) => [
    ...others.slice(0, index),
    value,
    ...others.slice(index),
  ];
  return {
    ...problem,
    model: (others, x, x2) => {
      const [predicted = Number.NaN, ...slopes] = problem.model(whole(others), x, x2);
      return [predicted, ...without(slopes)];
    },
    starts: [without(problem.starts[0]), without(problem.starts[1])],
  };
}

function expectAgreement(found: readonly number[], other: readonly number[]) {
  expect(found).toHaveLength(other.length);
  found.forEach((value, i) => {
    expect(Math.abs(value / (other[i] ?? Number.NaN) - 1)).toBeLessThan(10 ** -DIGITS);
  });
}

describe('least squares, beside a general-purpose library', () => {
  it.each(NEAR)('fits %s alike', (name) => {
    const problem = problemNamed(name);
    const { at, cost } = leastSquares(asLeastSquares(problem), problem.starts[1]);
    const library = byLibrary(problem);
    expectAgreement(at, library.parameterValues);
    expectAgreement([2 * cost], [library.parameterError]);
  });

  it('fits alike within bounds that are not in the way', () => {
    const problem = problemNamed('Rat42');
    const [minValues, maxValues] = [
      [0, 0, 0],
      [100, 10, 1],
    ];
    const bounds = { min: minValues, max: maxValues };
    const fit = leastSquares(asLeastSquares(problem), problem.starts[1], bounds);
    expectAgreement(fit.at, byLibrary(problem, { minValues, maxValues }).parameterValues);
    expect(fit.atBound).toEqual([false, false, false]);
  });

  // The library clips a step at the bounds and works nothing out anew: it stops short of the least
  // sum there. So the parameter that ends on its bound is held for it.
  it.each<[string, number, number, Bounds]>([
    ['Rat42', 0, 70, { min: [0, 0, 0], max: [70, 10, 1] }],
    ['Rat42', 2, 0.07, { min: [0, 0, 0.07], max: [200, 10, 1] }],
    ['Chwirut2', 0, 0.2, { min: [0.2, 0, 0], max: [1, 1, 1] }],
    ['DanWood', 0, 0.8, { min: [0.8, 0], max: [9, 9] }],
    ['DanWood', 1, 4, { min: [0, 4], max: [9, 9] }],
  ])(
    'fits %s with parameter %d stopped at %d as if it were held there',
    (name, index, value, bounds) => {
      const problem = problemNamed(name);
      const fit = leastSquares(asLeastSquares(problem), problem.starts[1], bounds);
      const library = byLibrary(held(problem, index, value));
      expect(fit.outcome).toBe('converged');
      expect(fit.atBound.indexOf(true)).toBe(index);
      expectAgreement(
        fit.at.filter((_, i) => i !== index),
        library.parameterValues,
      );
      expectAgreement([2 * fit.cost], [library.parameterError]);
      const clipped = byLibrary(problem, { minValues: bounds.min, maxValues: bounds.max });
      expect(clipped.parameterError).toBeGreaterThan(2 * fit.cost);
    },
  );
});
