import { describe, expect, it } from 'vitest';
import { judged, OFTEN, SELDOM } from '../../../../src/engine/fit/botched';

describe('judged', () => {
  it('leaves a shot that strays as expected its whole weight', () => {
    const { weight, goodShare } = judged(2, 2, SELDOM);
    expect(weight).toBeGreaterThan(0.98);
    expect(goodShare).toBeGreaterThan(0.98);
  });

  it('takes nearly all weight from one that strays ten times as far', () => {
    const { weight, goodShare } = judged(200, 2, SELDOM);
    expect(weight).toBeLessThan(0.011);
    expect(goodShare).toBeLessThan(1e-6);
  });

  it('draws on less and less for each further step away', () => {
    const costs = [0, 10, 20, 30, 40, 400].map((squares) => judged(squares, 1, SELDOM).cost);
    for (let at = 1; at < costs.length; at++) expect(costs[at]).toBeGreaterThan(costs[at - 1] ?? 0);
    // Far out the squares count for a hundredth: the wide law's, ten times as wide.
    expect((costs[5] ?? 0) - (costs[4] ?? 0)).toBeCloseTo(360 / 200, 6);
  });

  it('says by its weight how the cost changes with the squares', () => {
    const step = 1e-5;
    for (const botching of [SELDOM, OFTEN]) {
      for (const squares of [0.1, 3, 8, 15, 60]) {
        const [less, more] = [squares - step, squares + step].map((at) => judged(at, 2, botching));
        const slope = ((more?.cost ?? 0) - (less?.cost ?? 0)) / (2 * step);
        expect(judged(squares, 2, botching).weight / 2).toBeCloseTo(slope, 6);
      }
    }
  });

  it('never overflows', () => {
    const { cost, weight, goodShare } = judged(1e8, 3, SELDOM);
    for (const value of [cost, weight, goodShare]) expect(Number.isFinite(value)).toBe(true);
  });
});
