import { describe, expect, it } from 'vitest';
import { DEGREES } from '../../../src/units/angle-degrees';
import { CUT_UNITS } from '../../../src/units/cut-unit';
import { DISTANCE_UNITS } from '../../../src/units/distance-unit';
import { formatNumber, formatQuantity } from '../../../src/units/format-number';
import { LENGTH_UNITS } from '../../../src/units/length-unit';
import { SPEED_UNITS } from '../../../src/units/speed-unit';
import { TIP_CONTACT } from '../../../src/units/tip-contact';
import type { UnitFacts } from '../../../src/units/unit-facts';

describe('writing a number with its unit', () => {
  it.each([
    [1.15, DISTANCE_UNITS.m, '1.15 m'],
    [1.2, DISTANCE_UNITS.m, '1.20 m'],
    [115, DISTANCE_UNITS.cm, '115 cm'],
    [115.54, DISTANCE_UNITS.cm, '115.5 cm'],
    [45.28, DISTANCE_UNITS.in, '45.3 in'],
    [3.625, DISTANCE_UNITS.diamonds, '3⅝ diamonds'],
    [0.5, DISTANCE_UNITS.diamonds, '½ diamond'],
    [1, DISTANCE_UNITS.diamonds, '1 diamond'],
    [3.622, DISTANCE_UNITS.diamonds, '3.62 diamonds'],
    [1, DISTANCE_UNITS['table-lengths'], '1 table'],
    [0.45, DISTANCE_UNITS['table-lengths'], '0.45 tables'],
    [1.8, SPEED_UNITS.mps, '1.8 m/s'],
    [1.75, SPEED_UNITS.mps, '1.75 m/s'],
    [2, SPEED_UNITS.mps, '2.0 m/s'],
    [6.48, SPEED_UNITS.kmh, '6.5 km/h'],
    [24, DEGREES, '24°'],
    [24.5, DEGREES, '24.5°'],
    [-3, DEGREES, '−3°'],
    [0.593, CUT_UNITS['ball-hit'], '0.59 ball'],
    [0.5, CUT_UNITS['ball-hit'], '½ ball'],
    [-0.4, TIP_CONTACT, '−0.4 R'],
    [-0.5, TIP_CONTACT, '−½ R'],
    [25.6, LENGTH_UNITS.mm, '26 mm'],
    [2.56, LENGTH_UNITS.cm, '2.6 cm'],
    [1.008, LENGTH_UNITS.in, '1.01 in'],
  ])('writes %s as %s', (value, facts, text) => {
    expect(formatQuantity(value, facts)).toBe(text);
  });

  it('never writes a minus before nothing', () => {
    expect(formatNumber(-0, DEGREES)).toBe('0');
    expect(formatNumber(-0.004, DEGREES)).toBe('0');
    expect(formatNumber(-0.4, LENGTH_UNITS.mm)).toBe('0');
  });
});

describe('every unit', () => {
  const all = [LENGTH_UNITS, DISTANCE_UNITS, SPEED_UNITS, CUT_UNITS, { DEGREES, TIP_CONTACT }]
    .flatMap((units) => Object.entries<UnitFacts>(units))
    .map(([unit, facts]) => [unit, facts] as const);

  it.each(all)(
    '%s has a coarse step longer than its fine one, and both can be read',
    (_, facts) => {
      expect(facts.coarseStep).toBeGreaterThan(facts.fineStep);
      for (const step of [facts.fineStep, facts.coarseStep]) {
        expect(formatNumber(step, facts)).not.toBe(formatNumber(0, facts));
        expect(formatNumber(2 * step, facts)).not.toBe(formatNumber(step, facts));
      }
    },
  );
});
