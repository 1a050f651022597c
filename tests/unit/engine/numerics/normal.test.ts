import { describe, expect, it } from 'vitest';
import { normalBelow, normalQuantile } from '../../../../src/engine/numerics/normal';

describe('the normal law', () => {
  // Source: tables of the standard normal distribution, as in any handbook. Exact to the digits.
  it.each([
    [0, 0.5],
    [1, 0.8413447],
    [1.96, 0.9750021],
    [-1, 0.1586553],
    [-3, 0.0013499],
  ])('puts below %d a share of %d', (z, share) => {
    expect(Math.abs(normalBelow(z) - share)).toBeLessThan(2e-7);
  });

  it.each([
    [0.5, 0],
    [0.975, 1.959964],
    [0.8413447, 1],
    [0.001, -3.090232],
  ])('has its %d quantile at %d', (share, z) => {
    expect(Math.abs(normalQuantile(share) - z)).toBeLessThan(1e-6);
  });

  it('undoes itself', () => {
    for (let share = 0.01; share < 1; share += 0.01) {
      expect(Math.abs(normalBelow(normalQuantile(share)) - share)).toBeLessThan(3e-7);
    }
  });
});
