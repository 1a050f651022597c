import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buttHeightAt, elevationAt } from '../../../../src/engine/fit/butt-elevation';

/** A 2¼ in ball (WPA equipment specification) and a dime's radius for the tip (from memory). */
const SIZES = { ballRadiusM: 0.028575, tipRadiusM: 0.00895 };
const CENTRE = { side: 0, height: 0, cueLengthM: 1.47 };
const DEG = Math.PI / 180;

describe('the height of the butt', () => {
  it('is the ball’s radius on a level cue at the centre', () => {
    expect(buttHeightAt(0, CENTRE, SIZES)).toBe(SIZES.ballRadiusM);
  });

  it('is that of the axis on a level cue that strikes high', () => {
    // The axis lies further out than the contact point: by the radii's sum, by similar triangles.
    const height = 0.4;
    const axisM = SIZES.ballRadiusM + height * (SIZES.ballRadiusM + SIZES.tipRadiusM);
    expect(buttHeightAt(0, { ...CENTRE, height }, SIZES)).toBeCloseTo(axisM, 12);
  });

  it('rises with the sine from the ball’s centre, which a central cue points at', () => {
    // From the ball's centre to the butt: a ball's radius and the cue's length.
    const reachM = SIZES.ballRadiusM + 1.47;
    expect(buttHeightAt(30 * DEG, CENTRE, SIZES)).toBeCloseTo(SIZES.ballRadiusM + reachM / 2, 12);
  });

  it('tells how sure a reading is: a centimetre is 0.4° on an ordinary cue', () => {
    const [low, high] = [0.1, 0.11].map((heightM) => elevationAt(heightM, CENTRE, SIZES) ?? 0);
    expect(((high ?? 0) - (low ?? 0)) / DEG).toBeCloseTo((0.01 / 1.5) * (180 / Math.PI), 2);
  });
});

describe('the elevation from the butt', () => {
  it('is what the height came from, for any cue and contact', () => {
    const anyCue = fc.record({
      side: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
      height: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
      cueLengthM: fc.double({ min: 0.7, max: 2, noNaN: true }),
    });
    const anyElevation = fc.double({ min: 0, max: Math.PI / 4, noNaN: true });
    fc.assert(
      fc.property(anyCue, anyElevation, (cue, elevationRad) => {
        const heightM = buttHeightAt(elevationRad, cue, SIZES);
        expect(elevationAt(heightM, cue, SIZES)).toBeCloseTo(elevationRad, 10);
      }),
    );
  });

  it('is below level where the butt is lower than the tip', () => {
    expect(elevationAt(0.02, CENTRE, SIZES)).toBeLessThan(0);
  });

  it.each([1.6, 40, Number.NaN, Number.POSITIVE_INFINITY])(
    'is null at a height of %s m, which the cue does not reach',
    (heightM) => {
      expect(elevationAt(heightM, CENTRE, SIZES)).toBeNull();
    },
  );
});
