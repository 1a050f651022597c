import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nudge } from '../../../src/units/nudge';

const WIDE = { min: -100, max: 100 };

describe('nudging', () => {
  it.each([
    [1.15, 0.01, 1, 1.16],
    [1.15, 0.1, 1, 1.2],
    [1.15, 0.1, -1, 1.1],
    [3.622, 0.125, 1, 3.625],
    [3.622, 0.125, -1, 3.5],
    [0.3, 0.1, 1, 0.4],
    [0.1, 0.1, -1, 0],
    [-0.4, 0.1, -1, -0.5],
    [-0.02, 0.02, 1, 0],
  ] as const)('takes %s by steps of %s, towards %s, to %s', (value, step, towards, next) => {
    expect(nudge(value, step, towards, WIDE)).toBe(next);
  });

  it('stops at the ends of the range', () => {
    expect(nudge(0.98, 0.1, 1, { min: 0, max: 0.99 })).toBe(0.99);
    expect(nudge(0.99, 0.1, 1, { min: 0, max: 0.99 })).toBe(0.99);
    expect(nudge(0.003, 0.1, -1, { min: 0.002, max: 1 })).toBe(0.002);
  });

  it('lands on a multiple, beyond the start, at most a step and a hair away', () => {
    const step = fc.constantFrom(0.01, 0.02, 0.1, 0.125, 0.5, 1, 5);
    const start = fc.double({ min: -50, max: 50, noNaN: true });
    fc.assert(
      fc.property(start, step, fc.constantFrom(1, -1), (value, by, towards) => {
        const next = nudge(value, by, towards, WIDE);
        expect(Math.abs(next / by - Math.round(next / by))).toBeLessThan(1e-9);
        expect((next - value) * towards).toBeGreaterThan(0);
        expect(Math.abs(next - value)).toBeLessThanOrEqual(by * (1 + 2e-6));
      }),
    );
  });

  it('comes back after as many steps the other way', () => {
    const count = fc.integer({ min: 1, max: 40 });
    fc.assert(
      fc.property(fc.integer({ min: -40, max: 40 }), count, (from, steps) => {
        let value = Number((from * 0.1).toPrecision(12));
        const start = value;
        for (let step = 0; step < steps; step += 1) value = nudge(value, 0.1, 1, WIDE);
        for (let step = 0; step < steps; step += 1) value = nudge(value, 0.1, -1, WIDE);
        expect(value).toBeCloseTo(start, 12);
      }),
    );
  });
});
