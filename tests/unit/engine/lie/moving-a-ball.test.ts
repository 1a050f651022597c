import { describe, expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { frozen } from '../../../../src/engine/lie/freeze';
import { isLegal, legalPlace } from '../../../../src/engine/lie/legal-place';
import type { NamedBall } from '../../../../src/engine/lie/position';
import { snapped } from '../../../../src/engine/lie/snap';
import { WPA_POCKETS } from '../../../../src/engine/table/pocket-standard';
import { tableShape } from '../../../../src/engine/table/table-shape';
import { between, seededRandom } from '../../../harness/seeded-random';

const SHAPE = tableShape(2.54, 1.27, WPA_POCKETS);
const WIDTH_M = 2 * DEFAULT_KIT.ballRadiusM;
/** A ball on the bed touches a nose 0.27 R above its middle (WPA's 0.635 of the diameter). */
const OFF_NOSE_M = DEFAULT_KIT.ballRadiusM * Math.sqrt(1 - 0.27 ** 2);
const TWO: readonly NamedBall[] = [
  { name: 'cue', xM: 0, yM: 0 },
  { name: 1, xM: 0.3, yM: 0.3 },
];

const put = (xM: number, yM: number, balls = TWO) =>
  legalPlace(balls, 1, { xM, yM }, SHAPE, DEFAULT_KIT);

describe('the legal place nearest to where a ball is put', () => {
  it('is that place where it is free', () => {
    expect(put(0.2, -0.4)).toEqual({ xM: 0.2, yM: -0.4 });
  });

  it('is beside a ball that lies there, on the side it came from', () => {
    const place = put(0.01, 0);
    expect(place?.xM).toBeCloseTo(WIDTH_M, 9);
    expect(place?.yM).toBeCloseTo(0, 9);
  });

  it('is against the cushion it was pushed into', () => {
    expect(put(0.9, 0.5)?.xM).toBeCloseTo(0.635 - OFF_NOSE_M, 9);
    expect(put(0.9, 0.5)?.yM).toBe(0.5);
  });

  it('is none for a place that is no place', () => {
    expect(put(Number.NaN, 0)).toBeNull();
  });

  it('is always legal, and no legal place tried around it is nearer', () => {
    const random = seededRandom(70);
    for (let count = 0; count < 60; count++) {
      const crowd = Array.from({ length: 9 }, (_, at) => ({
        name: at + 2,
        xM: (at % 3) * 0.07 - 0.5 + between(random, 0, 0.01),
        yM: Math.floor(at / 3) * 0.07 + 1 + between(random, 0, 0.01),
      }));
      const wanted = { xM: between(random, -0.7, -0.2), yM: between(random, 0.9, 1.35) };
      const place = legalPlace(crowd, 1, wanted, SHAPE, DEFAULT_KIT);
      if (place === null) throw new Error('no place');
      const apartM = Math.hypot(place.xM - wanted.xM, place.yM - wanted.yM);
      expect(isLegal(place, crowd, SHAPE, DEFAULT_KIT)).toBe(true);
      for (let tries = 0; tries < 200; tries++) {
        const nearM = (apartM - 2e-6) * Math.sqrt(random());
        const way = between(random, 0, 2 * Math.PI);
        const other = {
          xM: wanted.xM + nearM * Math.sin(way),
          yM: wanted.yM + nearM * Math.cos(way),
        };
        if (apartM > 2e-6) expect(isLegal(other, crowd, SHAPE, DEFAULT_KIT)).toBe(false);
      }
    }
  });
});

describe('snapping', () => {
  it('goes to the spots and to the crossings of the diamonds’ lines', () => {
    expect(snapped({ xM: 0.01, yM: 0.64 }, SHAPE, 0.02)).toEqual({ xM: 0, yM: 0.635 });
    expect(snapped({ xM: -0.31, yM: -0.95 }, SHAPE, 0.02)).toEqual({ xM: -0.3175, yM: -0.9525 });
  });

  it('leaves a ball that is near none, and never snaps onto a nose', () => {
    const far = { xM: 0.1, yM: 0.5 };
    expect(snapped(far, SHAPE, 0.02)).toBe(far);
    const near = { xM: 0.607, yM: 0.3175 };
    expect(snapped(near, SHAPE, 0.05)).toBe(near);
  });
});

describe('freezing', () => {
  it('moves a ball against the nearest other, exactly', () => {
    const place = frozen(TWO, 1, SHAPE, DEFAULT_KIT);
    // The cushion is 0.31 m off, the other ball's surface 0.37 m.
    expect(place).toEqual({ xM: expect.closeTo(0.635 - OFF_NOSE_M, 9), yM: 0.3 });
    const near = [
      { name: 'cue' as const, xM: 0, yM: 0 },
      { name: 1, xM: 0.1, yM: 0 },
    ];
    expect(frozen(near, 1, SHAPE, DEFAULT_KIT)?.xM).toBeCloseTo(WIDTH_M, 12);
  });

  it('takes the next nearest where the nearest place is another ball’s', () => {
    const crowd = [
      { name: 1, xM: 0.5, yM: 0.3 },
      { name: 2, xM: 0.605, yM: 0.33 },
      { name: 'cue' as const, xM: 0.3, yM: 0.3 },
    ];
    const place = frozen(crowd, 1, SHAPE, DEFAULT_KIT);
    expect(place && Math.hypot(place.xM - 0.605, place.yM - 0.33)).toBeCloseTo(WIDTH_M, 9);
  });

  it('has nothing to do for a ball that is not there', () => {
    expect(frozen(TWO, 9, SHAPE, DEFAULT_KIT)).toBeNull();
  });
});
