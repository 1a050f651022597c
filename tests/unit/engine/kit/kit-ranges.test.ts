import { describe, expect, it } from 'vitest';
import { CUSHION_RANGES } from '../../../../src/engine/kit/cushion';
import { DEFAULT_KIT, type Kit } from '../../../../src/engine/kit/kit';
import {
  BALL_FRICTION_RANGES,
  BED_SLOPE_RANGE,
  findKitProblem,
  KIT_RANGES,
} from '../../../../src/engine/kit/kit-ranges';
import type { Range } from '../../../../src/engine/numerics/range';
import { nextUp } from '../../../harness/hostile-values';

/** Every quantity by its dotted name, its range, and the default kit with another value of it. */
const QUANTITIES: readonly (readonly [string, Range, (value: unknown) => Kit])[] = [
  ...Object.entries(KIT_RANGES).map(
    ([name, range]) =>
      [name, range, (value: unknown) => ({ ...DEFAULT_KIT, [name]: value }) as Kit] as const,
  ),
  ...Object.entries(BALL_FRICTION_RANGES).map(
    ([name, range]) =>
      [
        `ballFriction.${name}`,
        range,
        (value: unknown) =>
          ({ ...DEFAULT_KIT, ballFriction: { ...DEFAULT_KIT.ballFriction, [name]: value } }) as Kit,
      ] as const,
  ),
  ...Object.entries(CUSHION_RANGES).map(
    ([name, range]) =>
      [
        `cushion.${name}`,
        range,
        (value: unknown) =>
          ({ ...DEFAULT_KIT, cushion: { ...DEFAULT_KIT.cushion, [name]: value } }) as Kit,
      ] as const,
  ),
  ...['alongM_per_M', 'rightM_per_M'].map(
    (name) =>
      [
        `bedSlope.${name}`,
        BED_SLOPE_RANGE,
        (value: unknown) =>
          ({ ...DEFAULT_KIT, bedSlope: { ...DEFAULT_KIT.bedSlope, [name]: value } }) as Kit,
      ] as const,
  ),
];

describe('findKitProblem', () => {
  it('watches over every number of a kit', () => {
    const { ballFriction, bedSlope, cushion, ...plain } = DEFAULT_KIT;
    const numbers = [plain, ballFriction, bedSlope, cushion].flatMap((part) => Object.keys(part));
    expect(QUANTITIES.map(([name]) => name.split('.').at(-1)).sort()).toEqual(numbers.sort());
    expect(findKitProblem(DEFAULT_KIT)).toBeNull();
  });

  it.each(QUANTITIES)(
    '%s: takes both ends of its range and nothing beyond',
    (name, range, kitOf) => {
      expect(findKitProblem(kitOf(range.min))).toBeNull();
      expect(findKitProblem(kitOf(range.max))).toBeNull();
      const beyond = [
        -nextUp(-range.min),
        ...(Number.isFinite(range.max) ? [nextUp(range.max)] : []),
      ];
      for (const value of beyond) {
        expect(findKitProblem(kitOf(value))).toEqual({ quantity: name, value, range });
      }
    },
  );

  it.each(QUANTITIES)('%s: names what is no number', (name, range, kitOf) => {
    for (const value of [Number.NaN, '1', null, undefined, [], {}, true, 10n]) {
      expect(findKitProblem(kitOf(value))).toEqual({ quantity: name, value, range });
    }
  });
});
