import { describe, expect, it } from 'vitest';
import { latticePoint } from '../../../../src/engine/numerics/lattice';

const DIMENSIONS = 20;
const POINTS = 128;

const column = (dimension: number, copy: number) =>
  Array.from({ length: POINTS }, (_, n) => latticePoint(n, dimension, copy));

describe('the lattice', () => {
  it('fills every dimension with no wide gap, which random points would leave', () => {
    for (let dimension = 0; dimension < DIMENSIONS; dimension++) {
      const sorted = column(dimension, 1).sort((a, b) => a - b);
      const gaps = sorted.map((at, index) => at - (sorted[index - 1] ?? 0));
      expect(Math.min(...sorted)).toBeGreaterThan(0);
      expect(Math.max(...sorted)).toBeLessThan(1);
      expect(Math.max(...gaps)).toBeLessThan(4 / POINTS);
    }
  });

  it('has copies that differ, each always the same', () => {
    expect(column(3, 1)).toEqual(column(3, 1));
    expect(column(3, 1)).not.toEqual(column(3, 2));
    expect(column(3, 1)).not.toEqual(column(4, 1));
  });

  it('refuses a dimension that it does not have', () => {
    expect(() => latticePoint(0, DIMENSIONS, 1)).toThrow(RangeError);
  });
});
