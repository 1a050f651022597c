import { describe, expect, it } from 'vitest';
import { bracketedRoot } from '../../../../src/engine/numerics/bracketed-root';

/** The root, and how often f was called for it. */
function search(f: (x: number) => number, a: number, b: number, xTolerance = 0, fTolerance = 0) {
  let calls = 0;
  const counted = (x: number) => {
    calls++;
    return f(x);
  };
  return {
    ...bracketedRoot(counted, a, f(a), b, f(b), xTolerance, fTolerance),
    calls: () => calls,
  };
}

describe('bracketedRoot', () => {
  // Flat, steep, kinked and lopsided functions of a known root.
  it.each<[string, (x: number) => number, number, number, number]>([
    ['a straight line', (x) => 3 * x - 1, -4, 7, 1 / 3],
    ['a cubic, flat at its root', (x) => (x - 0.3) ** 3, -1, 1, 0.3],
    ['a ninth power, flatter still', (x) => (x - 0.3) ** 9, -1, 1, 0.3],
    ['a cube root, upright at its root', (x) => Math.cbrt(x - 0.7), 0, 5, 0.7],
    ['a square root about its root', (x) => Math.sign(x - 2) * Math.sqrt(Math.abs(x - 2)), 1, 9, 2],
    ['a step', (x) => (x < Math.SQRT2 ? -1 : 1), 0, 10, Math.SQRT2],
    ['an exponential wall', (x) => Math.exp(40 * x) - 1, -1, 1, 0],
    ['a steep arctangent', (x) => Math.atan(1e6 * (x - 0.1)), -1, 3, 0.1],
    ['a kink', (x) => (x < 0.2 ? 1e-3 * (x - 0.2) : 1e3 * (x - 0.2)), -1, 1, 0.2],
    ['a bracket given the wrong way round', (x) => x - 0.25, 1, 0, 0.25],
    ['a tiny interval', (x) => x - 1e-200, 0, 3e-200, 1e-200],
  ])('finds the root of %s', (_, f, a, b, root) => {
    const found = search(f, a, b, 1e-13);
    expect(found.converged).toBe(true);
    expect(Math.abs(found.x - root)).toBeLessThan(1e-10);
    expect(found.calls()).toBeLessThanOrEqual(120);
  });

  it('narrows a simple root to the last bits of a double', () => {
    for (const root of [1e-9, 0.1, Math.PI, 12345.678]) {
      const found = search((x) => Math.sinh((x - root) / root), root / 3, root * 2);
      expect(Math.abs(found.x - root) / root).toBeLessThan(1e-15);
    }
  });

  it('is quick on smooth functions: fewer calls than a third of halving', () => {
    const found = search((x) => Math.cos(x) - x, 0, 1, 1e-15);
    expect(Math.abs(Math.cos(found.x) - found.x)).toBeLessThan(1e-15);
    expect(found.calls()).toBeLessThan(16);
  });

  it('takes a root at either end of the bracket', () => {
    expect(search((x) => x, 0, 1).x).toBeCloseTo(0, 12);
    expect(search((x) => x - 1, 0, 1).x).toBeCloseTo(1, 12);
  });

  it('stops as soon as f is as small as asked, and says what f is there', () => {
    const f = (x: number) => x * x - 2;
    const rough = search(f, 0, 2, 0, 0.1);
    expect(Math.abs(rough.fx)).toBeLessThanOrEqual(0.1);
    expect(rough.fx).toBe(f(rough.x));
    expect(rough.calls()).toBeLessThan(search(f, 0, 2).calls());
  });

  it('stays within the bracket and ends, whatever f does', () => {
    // No change of sign, and an f that is nowhere a number: no root, but no harm either.
    for (const f of [(x: number) => x * x + 1, () => Number.NaN]) {
      const found = search(f, -1, 2);
      expect(found.x).toBeGreaterThanOrEqual(-1);
      expect(found.x).toBeLessThanOrEqual(2);
      expect(found.calls()).toBeLessThanOrEqual(120);
    }
  });
});
