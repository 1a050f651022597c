import { expect, it } from 'vitest';
import { bearing, wrapped } from '../../../../src/engine/numerics/angle';

it('bearing is clockwise from y', () => {
  expect(bearing(0, 1)).toBe(0);
  expect(bearing(1, 0)).toBeCloseTo(Math.PI / 2, 15);
  expect(bearing(-1, 0)).toBeCloseTo(-Math.PI / 2, 15);
  expect(bearing(0, -1)).toBeCloseTo(Math.PI, 15);
});

it('wrapped keeps the direction and comes within (−π, π]', () => {
  for (let turn = -9.7; turn < 9.7; turn += 0.0371) {
    const angle = wrapped(turn * Math.PI);
    expect(angle).toBeGreaterThan(-Math.PI);
    expect(angle).toBeLessThanOrEqual(Math.PI);
    expect(Math.cos(angle)).toBeCloseTo(Math.cos(turn * Math.PI), 12);
    expect(Math.sin(angle)).toBeCloseTo(Math.sin(turn * Math.PI), 12);
  }
  expect(wrapped(Math.PI)).toBe(Math.PI);
  expect(wrapped(-Math.PI)).toBe(Math.PI);
  expect(wrapped(0.3)).toBe(0.3);
});
