import { describe, expect, it } from 'vitest';
import { enoughAimRad, enoughDistanceM } from '../../../../src/engine/fit/enough';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';

const { ballRadiusM } = DEFAULT_KIT;

describe('an aim that is good enough', () => {
  // Truth tests: a small aim error turns the object ball by d/(2R cos φ) as much.
  it.each([
    [0.5, 0],
    [1, 0.4],
    [1.5, -0.6],
  ])(
    'turns the object ball by what its target allows, %d m and a cut of %d',
    (distanceM, cutRad) => {
      const allowed = 0.05;
      const off = enoughAimRad({ distanceM, cutRad }, allowed, ballRadiusM);
      expect((off * distanceM) / (2 * ballRadiusM * Math.cos(cutRad))).toBeCloseTo(allowed, 12);
      expect(enoughDistanceM(cutRad, allowed, ballRadiusM, off)).toBeCloseTo(distanceM, 12);
    },
  );
});
