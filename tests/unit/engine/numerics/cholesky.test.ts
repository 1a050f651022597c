import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cholesky, choleskyInverse, choleskySolve } from '../../../../src/engine/numerics/cholesky';

type Matrix = readonly (readonly number[])[];

const factorOf = (matrix: Matrix) => {
  const factor = cholesky(matrix);
  if (factor === null) throw new Error('not positive definite');
  return factor;
};

/** 1 / (i + j + 1): positive definite, and notoriously close to not being so. */
const hilbert = (size: number): Matrix =>
  Array.from({ length: size }, (_, i) => Array.from({ length: size }, (_, j) => 1 / (i + j + 1)));

/** BBᵀ with more on the diagonal is positive definite; units of the rows are powers of ten apart. */
const positiveDefinite = fc.integer({ min: 1, max: 6 }).chain((size) => {
  const entry = fc.double({ min: -1, max: 1, noNaN: true });
  const row = fc.array(entry, { minLength: size, maxLength: size });
  const unit = fc.integer({ min: -8, max: 8 }).map((power) => 10 ** power);
  return fc
    .tuple(
      fc.array(row, { minLength: size, maxLength: size }),
      fc.array(unit, { minLength: size, maxLength: size }),
    )
    .map(([rows, units]) =>
      rows.map((one, i) =>
        rows.map(
          (other, j) => (product(one, other) + (i === j ? 0.1 : 0)) * at(units, i) * at(units, j),
        ),
      ),
    );
});

const at = (values: readonly number[], i: number) => values[i] ?? 0;

const product = (a: readonly number[], b: readonly number[]) =>
  a.reduce((sum, value, i) => sum + value * at(b, i), 0);

describe('cholesky', () => {
  it('factors a textbook matrix', () => {
    // Source: the usual worked example of the decomposition (from memory); squares and products.
    const matrix = [
      [4, 12, -16],
      [12, 37, -43],
      [-16, -43, 98],
    ];
    expect(cholesky(matrix)).toEqual([[2], [6, 1], [-8, 5, 3]]);
  });

  it('gives a factor that multiplies back to the matrix', () => {
    fc.assert(
      fc.property(positiveDefinite, (matrix) => {
        const factor = factorOf(matrix);
        matrix.forEach((row, i) => {
          row.forEach((entry, j) => {
            const back = product(factor[i] ?? [], factor[j] ?? []);
            const size = Math.sqrt(at(row, i) * at(matrix[j] ?? [], j));
            expect(Math.abs(back - entry)).toBeLessThan(1e-14 * size);
          });
        });
      }),
      { numRuns: 300, seed: 1 },
    );
  });

  it('reads the lower triangle only', () => {
    const half = [[4], [12, 37], [-16, -43, 98]];
    expect(cholesky(half)).toEqual([[2], [6, 1], [-8, 5, 3]]);
  });

  it.each<[string, Matrix]>([
    [
      'indefinite',
      [
        [1, 2],
        [2, 1],
      ],
    ],
    ['negative', [[-1]]],
    ['nothing', [[0]]],
    [
      'degenerate: one row twice another',
      [
        [1, 2],
        [2, 4],
      ],
    ],
    [
      'degenerate but for rounding',
      [
        [0.1, 0.3],
        [0.3, 0.9],
      ],
    ],
    ['without a row’s end', [[1], [0]]],
    ['not a number', [[Number.NaN]]],
    ['not finite', [[Infinity]]],
    [
      'not finite off the diagonal',
      [
        [1, Infinity],
        [Infinity, 1],
      ],
    ],
  ])('has no factor of a matrix that is %s', (_, matrix) => {
    expect(cholesky(matrix)).toBeNull();
  });

  it('has a factor of a matrix that is barely positive definite', () => {
    // Source: the determinant of the Hilbert matrix of 10 rows is 2.164e-53 (from memory).
    const factor = factorOf(hilbert(10));
    const determinant = factor.reduce((all, row, i) => all * at(row, i) ** 2, 1);
    expect(determinant / 2.164e-53).toBeCloseTo(1, 2);
  });

  it('factors nothing into nothing', () => {
    expect(cholesky([])).toEqual([]);
  });
});

describe('choleskySolve', () => {
  it('solves a textbook system', () => {
    // Source: the textbook matrix times (1, 2, 3).
    const factor = [[2], [6, 1], [-8, 5, 3]];
    expect(choleskySolve(factor, [-20, -43, 192])).toEqual([1, 2, 3]);
  });

  it('leaves a residual of the order of rounding', () => {
    fc.assert(
      fc.property(positiveDefinite, fc.integer(), (matrix, seed) => {
        const right = matrix.map((row, i) => Math.sin(seed + i) * Math.sqrt(at(row, i)));
        const x = choleskySolve(factorOf(matrix), right);
        matrix.forEach((row, i) => {
          const terms = row.map((entry, j) => Math.abs(entry * at(x, j)));
          const scale = Math.abs(at(right, i)) + terms.reduce((sum, term) => sum + term, 0);
          expect(Math.abs(product(row, x) - at(right, i))).toBeLessThan(1e-13 * scale);
        });
      }),
      { numRuns: 300, seed: 2 },
    );
  });

  it('does not touch what it is given', () => {
    const right = Object.freeze([1, 2]);
    expect(choleskySolve(factorOf(hilbert(2)), right)).toHaveLength(2);
    expect(right).toEqual([1, 2]);
  });
});

describe('choleskyInverse', () => {
  it('inverts the Hilbert matrix into its whole numbers', () => {
    // Source: the known inverse of the Hilbert matrix of 4 rows (from memory).
    const known = [
      [16, -120, 240, -140],
      [-120, 1200, -2700, 1680],
      [240, -2700, 6480, -4200],
      [-140, 1680, -4200, 2800],
    ];
    const inverse = choleskyInverse(factorOf(hilbert(4)));
    known.forEach((row, i) => {
      row.forEach((entry, j) => {
        expect(at(inverse[i] ?? [], j) / entry).toBeCloseTo(1, 11);
      });
    });
  });

  it('is exactly symmetric with a positive diagonal, as a covariance is', () => {
    fc.assert(
      fc.property(positiveDefinite, (matrix) => {
        const inverse = choleskyInverse(factorOf(matrix));
        inverse.forEach((row, i) => {
          expect(at(row, i)).toBeGreaterThan(0);
          expect(row).toEqual(inverse.map((other) => at(other, i)));
        });
      }),
      { numRuns: 200, seed: 3 },
    );
  });

  it('solves like choleskySolve', () => {
    fc.assert(
      fc.property(positiveDefinite, (matrix) => {
        const factor = factorOf(matrix);
        const right = matrix.map((row, i) => Math.sqrt(at(row, i)));
        const solved = choleskySolve(factor, right);
        choleskyInverse(factor).forEach((row, i) => {
          const scale = Math.sqrt(at(row, i)) * right.length;
          expect(Math.abs(product(row, right) - at(solved, i))).toBeLessThan(1e-11 * scale);
        });
      }),
      { numRuns: 200, seed: 4 },
    );
  });
});
