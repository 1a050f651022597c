import { describe, expect, it } from 'vitest';
import type { KitKnowledge } from '../../../../src/engine/fit/kit-knowledge';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import {
  KIT_QUANTITIES,
  type KitQuantity,
  UNMEASURED,
} from '../../../../src/engine/kit/kit-spread';
import { knownAlongShot } from '../../../../src/state/measure/known-along-shot';

const place = (name: KitQuantity) => KIT_QUANTITIES.indexOf(name);
const [ALONG, RIGHT, ROLL] = [
  place('bedSlopeAlong'),
  place('bedSlopeRight'),
  place('rollFriction'),
];
const LEVEL = { alongM_per_M: 0, rightM_per_M: 0 };

/** A table that falls 1 mm/m away from the break end, invented: better known along than across. */
function measured(ties: readonly (readonly [number, number, number])[] = []): KitKnowledge {
  const correlation = KIT_QUANTITIES.map((_, i) =>
    KIT_QUANTITIES.map((_, j) => {
      const tie = ties.find(([a, b]) => (a === i && b === j) || (a === j && b === i));
      return i === j ? 1 : (tie?.[2] ?? 0);
    }),
  );
  return {
    kit: { ...DEFAULT_KIT, bedSlope: { alongM_per_M: 0.001, rightM_per_M: 0 } },
    spread: { ...UNMEASURED, bedSlopeAlong: 0.00006, bedSlopeRight: 0.00008 },
    correlation,
  };
}

describe('what a shot sees of a table whose tilt was measured', () => {
  it('is the tilt as it stands for a shot away from the break end', () => {
    const known = measured([[ALONG, ROLL, 0.5]]);
    const seen = knownAlongShot(known, LEVEL, 0);
    expect(seen.kit).toEqual(known.kit);
    expect(seen.spread.bedSlopeAlong).toBeCloseTo(0.00006, 15);
    expect(seen.spread.bedSlopeRight).toBeCloseTo(0.00008, 15);
    expect(seen.correlation[ALONG]?.[ROLL]).toBeCloseTo(0.5, 12);
  });

  it('falls to the left for a shot to the right, and is known as well as it was along', () => {
    const seen = knownAlongShot(measured([[ALONG, ROLL, 0.5]]), LEVEL, Math.PI / 2);
    expect(seen.kit.bedSlope.alongM_per_M).toBeCloseTo(0, 15);
    expect(seen.kit.bedSlope.rightM_per_M).toBeCloseTo(-0.001, 15);
    expect(seen.spread.bedSlopeAlong).toBeCloseTo(0.00008, 15);
    expect(seen.spread.bedSlopeRight).toBeCloseTo(0.00006, 15);
    expect(seen.correlation[RIGHT]?.[ROLL]).toBeCloseTo(-0.5, 12);
    expect(seen.correlation[ROLL]?.[RIGHT]).toBeCloseTo(-0.5, 12);
    expect(seen.correlation[ALONG]?.[ROLL]).toBeCloseTo(0, 12);
  });

  it('has both in it for a shot across, and they go together', () => {
    const seen = knownAlongShot(measured(), LEVEL, Math.PI / 4);
    // Half of each variance; the covariance is half their difference: (8² − 6²)/(8² + 6²).
    const sd = Math.sqrt((0.00006 ** 2 + 0.00008 ** 2) / 2);
    expect(seen.spread.bedSlopeAlong).toBeCloseTo(sd, 15);
    expect(seen.spread.bedSlopeRight).toBeCloseTo(sd, 15);
    expect(seen.correlation[ALONG]?.[RIGHT]).toBeCloseTo(0.28, 10);
    expect(seen.correlation[ALONG]?.[ALONG]).toBe(1);
  });

  it('may be anything of it where the direction is not said', () => {
    const record = { alongM_per_M: 0.0002, rightM_per_M: 0 };
    const seen = knownAlongShot(measured([[ALONG, ROLL, 0.5]]), record, null);
    expect(seen.kit.bedSlope).toEqual(record);
    // Half of the squares of 0.8 mm/m more than the record has, and of the two deviations.
    const sd = Math.sqrt((0.0008 ** 2 + 0.00006 ** 2 + 0.00008 ** 2) / 2);
    expect(seen.spread.bedSlopeAlong).toBeCloseTo(sd, 15);
    expect(seen.spread.bedSlopeRight).toBeCloseTo(sd, 15);
    expect(seen.correlation[ALONG]?.[ROLL]).toBe(0);
    expect(seen.correlation[ALONG]?.[ALONG]).toBe(1);
  });

  it('is as assumed where nothing was measured and nothing said', () => {
    const bedSlope = { alongM_per_M: 0.0005, rightM_per_M: -0.001 };
    const known = { ...measured(), kit: { ...DEFAULT_KIT, bedSlope }, spread: UNMEASURED };
    const seen = knownAlongShot(known, bedSlope, null);
    expect(seen.kit).toEqual(known.kit);
    expect(seen.spread.bedSlopeAlong).toBeCloseTo(UNMEASURED.bedSlopeAlong, 15);
    expect(seen.spread.bedSlopeRight).toBeCloseTo(UNMEASURED.bedSlopeRight, 15);
  });
});
