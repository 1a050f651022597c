import { describe, expect, it } from 'vitest';
import { dipThroughZero } from '../../../../src/engine/numerics/dip-through-zero';

function dip(f: (x: number) => number, a: number, b: number) {
  let calls = 0;
  const counted = (x: number) => {
    calls++;
    return f(x);
  };
  return { x: dipThroughZero(counted, a, f(a), b, f(b)), calls };
}

describe('dipThroughZero', () => {
  it.each<[string, (x: number) => number, number, number]>([
    ['a shallow dip in the middle', (x) => x * x - 0.01, -1, 1.2],
    ['a dip hard by one end', (x) => (x - 0.01) ** 2 - 5e-5, 0, 1],
    ['a dip hard by the other end', (x) => (x - 0.99) ** 2 - 5e-5, 0, 1],
    ['a hair’s breadth', (x) => (x - 0.4) ** 2 - 1e-9, 0, 1],
    ['a rise from below', (x) => 0.01 - x * x, -1, 1.2],
    ['a corner', (x) => Math.abs(x - 0.2) - 0.001, 0, 1],
  ])('finds the far side of %s', (_, f, a, b) => {
    const { x } = dip(f, a, b);
    if (x === null) throw new Error('not found');
    expect(x).toBeGreaterThan(a);
    expect(x).toBeLessThan(b);
    expect(f(x) > 0).toBe(f(a) < 0);
  });

  it('knows a dip that stays clear of zero, and soon', () => {
    const { x, calls } = dip((at) => (at - 0.3) ** 2 + 0.2, 0, 1);
    expect(x).toBeNull();
    expect(calls).toBeLessThan(10);
  });

  it('knows a slope, which has no dip', () => {
    expect(dip((x) => 1 + x, 0, 10).x).toBeNull();
    expect(dip((x) => -3 - x, 0, 0.5).x).toBeNull();
  });

  it('ends on a touch of zero and on what is no number', () => {
    expect(dip((x) => (x - 0.5) ** 2, 0, 1.1).calls).toBeLessThanOrEqual(42);
    expect(dip(() => Number.NaN, 0, 1).x).toBeNull();
  });
});
