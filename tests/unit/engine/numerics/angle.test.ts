import { expect, it } from 'vitest';
import { bearing, roughBearing, wrapped } from '../../../../src/engine/numerics/angle';

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

it('roughBearing rises with the bearing, and knows quarter and half turns', () => {
  let before = Number.NEGATIVE_INFINITY;
  for (let angle = -3.14; angle < 3.14; angle += 0.01) {
    const rough = roughBearing(7 * Math.sin(angle), 7 * Math.cos(angle));
    expect(rough).toBeGreaterThan(before);
    expect(rough - roughBearing(-Math.sin(angle), -Math.cos(angle))).toBeCloseTo(
      2 * Math.sign(angle),
      12,
    );
    before = rough;
  }
  expect([roughBearing(0, 1), roughBearing(1, 0), roughBearing(-3, 0)]).toEqual([0, 1, -1]);
  expect(roughBearing(0, -1)).toBe(2);
  expect(roughBearing(0, 0)).toBeNaN();
});
