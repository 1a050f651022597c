import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Bounds,
  type LeastSquaresProblem,
  leastSquares,
} from '../../../../src/engine/numerics/least-squares';
import { type ResidualRow, residualProblem, watched } from '../../../harness/residual-problem';
import { beale, rosenbrock, wood } from './valleys';

/** Coarse, so that bounds meet, starts lie on them and rows depend on one another. */
const eighths = (min: number, max: number) =>
  fc.integer({ min: 8 * min, max: 8 * max }).map((value) => value / 8);

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const boxed = (size: number) =>
  fc.array(fc.tuple(eighths(-3, 3), eighths(-3, 3)), { minLength: size, maxLength: size }).map(
    (ends): Bounds => ({
      min: ends.map((pair) => Math.min(...pair)),
      max: ends.map((pair) => Math.max(...pair)),
    }),
  );

const isWithin = (at: readonly number[], { min, max }: Bounds) =>
  at.every((value, i) => value >= (min[i] ?? 0) && value <= (max[i] ?? 0));

/** Rows of a problem with residuals that are straight in all variables. */
const straight = fc.integer({ min: 1, max: 5 }).chain((size) =>
  fc.record({
    rows: fc.array(fc.array(eighths(-1, 1), { minLength: size + 1, maxLength: size + 1 }), {
      minLength: size + 1,
      maxLength: 2 * size + 2,
    }),
    start: fc.array(eighths(-5, 5), { minLength: size, maxLength: size }),
    bounds: boxed(size),
  }),
);

const straightProblem = (rows: readonly (readonly number[])[]) =>
  residualProblem((at) =>
    rows.map(([offset = 0, ...slopes]): ResidualRow => {
      const risen = slopes.reduce((sum, slope, i) => sum + slope * (at[i] ?? 0), 0);
      return [offset + risen, ...slopes];
    }),
  );

describe('laws of leastSquares', () => {
  it('does not mind units: of variables, nor of residuals', () => {
    const power = fc.integer({ min: -30, max: 30 }).map((exponent) => 2 ** exponent);
    fc.assert(
      fc.property(fc.constantFrom(rosenbrock, beale), power, power, power, (problem, p, q, r) => {
        const units = [p, q];
        const plain = leastSquares(problem, [0.5, 1]);
        const inUnits = leastSquares(rescaled(problem, units, r), [0.5 / p, 1 / q]);
        expect(inUnits.rounds).toBe(plain.rounds);
        expect(inUnits.outcome).toBe(plain.outcome);
        expect(inUnits.at.map((value, i) => value * (units[i] ?? 1))).toEqual(plain.at);
      }),
      { numRuns: 100, seed: 1 },
    );
  });

  it('finds the least of straight residuals, wherever the bounds are', () => {
    fc.assert(
      fc.property(straight, ({ rows, start, bounds }) => {
        const fit = leastSquares(straightProblem(rows), start, bounds);
        expect(fit.outcome).toBe('converged');
        fit.gradient.forEach((slope, i) => {
          // Kuhn and Tucker's conditions: no slope inside, none that leads inside on a bound.
          const size = Math.sqrt(2 * fit.cost * (fit.curvature[i]?.[i] ?? 0));
          if (fit.at[i] !== bounds.min[i]) expect(slope).toBeLessThanOrEqual(1e-7 * size + 1e-12);
          if (fit.at[i] !== bounds.max[i]) expect(-slope).toBeLessThanOrEqual(1e-7 * size + 1e-12);
        });
      }),
      { numRuns: 1000, seed: 2 },
    );
  });

  it('never looks beyond its bounds, nor climbs, whatever the valley', () => {
    const valley = fc.constantFrom(rosenbrock, beale, wood);
    const start = fc.array(eighths(-4, 4), { minLength: 4, maxLength: 4 });
    fc.assert(
      fc.property(valley, start, boxed(4), (problem, from, bounds) => {
        const { problem: looked, tried } = watched(problem);
        const fit = leastSquares(looked, from, bounds);
        expect(tried.every((at) => isWithin(at, bounds))).toBe(true);
        expect(fit.cost).toBeLessThanOrEqual(problem.costAt(tried[0] ?? []));
        expect(fit.outcome).not.toBe('stuck');
      }),
      { numRuns: 500, seed: 3 },
    );
  });

  it('finds again what exact readings were made from', () => {
    const share = number(0.5, 2);
    fc.assert(
      fc.property(
        fc.tuple(number(0.5, 5), number(0.2, 2), number(0.1, 3)),
        fc.tuple(share, share, share),
        (made, shares) => {
          const readings = decay(made).map(([value]) => value);
          const problem = residualProblem((at) =>
            decay(at).map(([value, ...slopes], i) => [value - (readings[i] ?? 0), ...slopes]),
          );
          const start = made.map((value, i) => value * (shares[i] ?? 1));
          const fit = leastSquares(problem, start, { min: [0.1, 0.1, 0], max: [20, 10, 20] });
          expect(fit.outcome).toBe('converged');
          made.forEach((value, i) => {
            expect((fit.at[i] ?? 0) / value).toBeCloseTo(1, 6);
          });
        },
      ),
      { numRuns: 300, seed: 4 },
    );
  });

  it('ends, inside and with numbers only, on whatever it is given', () => {
    const odd = fc.constantFrom(0, 1, -1, 1e-300, 1e300, -1e300, Infinity, -Infinity, Number.NaN);
    const value = fc.oneof(odd, number(-2, 2));
    const pair = fc.tuple(value, value);
    fc.assert(
      fc.property(
        fc.array(value, { maxLength: 40 }),
        pair,
        pair,
        boxed(2),
        (costs, g, c, bounds) => {
          let call = 0;
          const hostile: LeastSquaresProblem = {
            costAt: () => costs[call++ % costs.length] ?? 0,
            curvedAt: () => ({ cost: 0, gradient: g, curvature: [c, [c[1], c[0]]] }),
          };
          const fit = leastSquares(hostile, [0.5, -0.5], bounds);
          expect(isWithin(fit.at, bounds)).toBe(true);
          expect([fit.gradient, ...fit.curvature].flat().every(Number.isFinite)).toBe(true);
          expect(fit.cost).not.toBeNaN();
          expect(call).toBeLessThanOrEqual(1001);
        },
      ),
      { numRuns: 1000, seed: 5 },
    );
  });
});

/** The same problem with variables counted in other units, and residuals in another. */
function rescaled(
  { costAt, curvedAt }: LeastSquaresProblem,
  units: readonly number[],
  residualUnit: number,
): LeastSquaresProblem {
  const plain = (at: readonly number[]) => at.map((value, i) => value * (units[i] ?? 1));
  const square = residualUnit ** 2;
  return {
    costAt: (at) => costAt(plain(at)) * square,
    curvedAt: (at) => {
      const { cost, gradient, curvature } = curvedAt(plain(at));
      return {
        cost: cost * square,
        gradient: gradient.map((slope, i) => slope * (units[i] ?? 1) * square),
        curvature: curvature.map((row, i) =>
          row.map((bend, j) => bend * (units[i] ?? 1) * (units[j] ?? 1) * square),
        ),
      };
    },
  };
}

/** Something that dies away to a remainder, read eight times. */
function decay([size = 0, rate = 0, rest = 0]: readonly number[]): ResidualRow[] {
  return [0, 1, 2, 3, 4, 5, 6, 7].map((time) => {
    const left = Math.exp(-rate * time);
    return [size * left + rest, left, -size * time * left, 1];
  });
}
