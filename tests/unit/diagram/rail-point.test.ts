import { describe, expect, it } from 'vitest';
import { railPoint } from '../../../src/diagram/rail-point';

/** Nine feet: a diamond is 0.3175 m on every rail. */
const BED = { lengthM: 2.54, widthM: 1.27 };
const DIAMOND_M = 0.3175;
const rad = (degrees: number) => (degrees * Math.PI) / 180;

describe('where the cue points', () => {
  it('is told of the nearer corner, in diamonds along the rail', () => {
    // From the middle straight up, right, down and left: half of a rail is left on either side.
    const from = { xM: 0.1, yM: 0.2 };
    const fromCorner = (rail: string, corner: string, alongM: number, awayM: number) => ({
      rail,
      corner,
      diamonds: expect.closeTo(alongM / DIAMOND_M, 9),
      awayM: expect.closeTo(awayM, 9),
    });
    expect(railPoint(from, 0, BED)).toMatchObject(
      fromCorner('far', 'far-right', 0.635 - 0.1, 1.27 - 0.2),
    );
    expect(railPoint(from, rad(90), BED)).toMatchObject(
      fromCorner('right', 'far-right', 1.27 - 0.2, 0.635 - 0.1),
    );
    expect(railPoint(from, rad(180), BED)).toMatchObject(
      fromCorner('near', 'near-right', 0.635 - 0.1, 1.27 + 0.2),
    );
    expect(railPoint(from, rad(-90), BED)).toMatchObject(
      fromCorner('left', 'far-left', 1.27 - 0.2, 0.635 + 0.1),
    );
  });

  it('is on the rail that the line comes to first', () => {
    // Half left from the middle: the left nose is 0.635 m off, the far one 1.27 m.
    const { rail, corner, spot, diamonds, awayM } = railPoint({ xM: 0, yM: 0 }, rad(-45), BED);
    expect({ rail, corner }).toEqual({ rail: 'left', corner: 'far-left' });
    expect(spot.xM).toBeCloseTo(-0.635, 12);
    expect(spot.yM).toBeCloseTo(0.635, 12);
    expect(diamonds).toBeCloseTo(2, 9);
    expect(awayM).toBeCloseTo(0.635 * Math.SQRT2, 9);
  });

  it('takes a heading that was turned all the way round', () => {
    const from = { xM: -0.3, yM: -0.7 };
    const [once, again] = [rad(70), rad(70 - 360)].map((heading) => railPoint(from, heading, BED));
    expect(again?.rail).toBe(once?.rail);
    expect(again?.diamonds).toBeCloseTo(once?.diamonds ?? Number.NaN, 9);
  });
});
