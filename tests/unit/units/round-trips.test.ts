import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import { degreesOf, radOf } from '../../../src/units/angle-degrees';
import { distanceInM, distanceInUnit } from '../../../src/units/distance-unit';
import { lengthInM, lengthInUnit } from '../../../src/units/length-unit';
import { speedScale } from '../../../src/units/speed-unit';
import type { DistanceUnit, LengthUnit, SpeedUnit } from '../../../src/units/unit-names';

/** A nine-foot table with an ordinary cloth. */
const BED = { tableLengthM: 2.54, kit: DEFAULT_KIT };

/** Two roundings of a double, relative. */
const TWO_ROUNDINGS = 2.5 * Number.EPSILON;

/** Magnitudes a table can show, both signs, nothing so small that doubles run out. */
const quantity = fc
  .tuple(fc.double({ min: 1e-6, max: 1e4, noNaN: true }), fc.boolean())
  .map(([size, negative]) => (negative ? -size : size));
/** What a person types: at most four decimals. */
const typed = fc.integer({ min: -10_000_000, max: 10_000_000 }).map((count) => count / 10_000);

function expectRoundTrip(there: (x: number) => number, back: (x: number) => number): void {
  fc.assert(
    fc.property(quantity, (x) => {
      expect(Math.abs(back(there(x)) - x)).toBeLessThanOrEqual(TWO_ROUNDINGS * Math.abs(x));
    }),
  );
  fc.assert(
    fc.property(typed, (figure) => {
      expect(Number(there(back(figure)).toFixed(4))).toBe(figure === 0 ? 0 : figure);
    }),
  );
}

describe('units convert there and back', () => {
  it.each<LengthUnit>(['mm', 'cm', 'in'])('length in %s', (unit) => {
    expectRoundTrip(
      (x) => lengthInUnit(x, unit),
      (x) => lengthInM(x, unit),
    );
  });

  it.each<DistanceUnit>(['m', 'cm', 'in', 'diamonds', 'table-lengths'])(
    'distance in %s',
    (unit) => {
      for (const tableLengthM of [1.9304, 2.54, 3.569]) {
        expectRoundTrip(
          (x) => distanceInUnit(x, unit, tableLengthM),
          (x) => distanceInM(x, unit, tableLengthM),
        );
      }
    },
  );

  it.each<SpeedUnit>(['mps', 'kmh', 'mph'])('speed in %s', (unit) => {
    const { inUnit, inMps } = speedScale(unit, BED);
    expectRoundTrip(inUnit, inMps);
  });

  it('angles in degrees', () => {
    expectRoundTrip(degreesOf, radOf);
  });
});

describe('units agree with figures known elsewhere', () => {
  it('reads an inch as 25.4 mm and 2.54 cm', () => {
    expect(lengthInM(1, 'in')).toBe(0.0254);
    expect(lengthInUnit(0.0254, 'mm')).toBeCloseTo(25.4, 12);
    expect(lengthInUnit(0.0254, 'cm')).toBeCloseTo(2.54, 12);
  });

  it('reads a diamond of a nine-foot table as 12.5 inches, and eight as its length', () => {
    expect(distanceInUnit(distanceInM(1, 'diamonds', 2.54), 'in', 2.54)).toBeCloseTo(12.5, 12);
    expect(distanceInUnit(2.54, 'diamonds', 2.54)).toBe(8);
    expect(distanceInUnit(2.54, 'table-lengths', 2.54)).toBe(1);
  });

  it('reads a diamond of a shorter table as shorter', () => {
    expect(distanceInM(1, 'diamonds', 1.9304)).toBeCloseTo(0.2413, 12);
  });

  it('reads 1 m/s as 3.6 km/h, and 60 mph as 26.8224 m/s', () => {
    expect(speedScale('kmh', BED).inUnit(1)).toBeCloseTo(3.6, 12);
    expect(speedScale('mph', BED).inMps(60)).toBeCloseTo(26.8224, 12);
  });

  it('reads a half turn as 180°', () => {
    expect(degreesOf(Math.PI)).toBe(180);
    expect(radOf(-90)).toBe(-Math.PI / 2);
  });
});
