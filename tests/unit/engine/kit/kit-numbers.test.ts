import { describe, expect, it } from 'vitest';
import { DEFAULT_KIT, type Kit } from '../../../../src/engine/kit/kit';
import {
  findKitProblem,
  numberIn,
  numbersOfPart,
  PARTS,
  type Part,
  PLACED_NUMBERS,
  withNumber,
} from '../../../../src/engine/kit/kit-numbers';
import type { Range } from '../../../../src/engine/numerics/range';
import { nextUp } from '../../../harness/hostile-values';

/** Every number by its dotted name, its range, and the default kit with another value of it. */
const NUMBERS = PLACED_NUMBERS.map((number): readonly [string, Range, (value: unknown) => Kit] => [
  number.path,
  number.range,
  (value) => withNumber(DEFAULT_KIT, number, value as number),
]);

describe('findKitProblem', () => {
  it('watches over every number of a kit', () => {
    const { ballFriction, bedSlope, cushion, ...plain } = DEFAULT_KIT;
    const numbers = [plain, ballFriction, bedSlope, cushion].flatMap((part) => Object.keys(part));
    expect(NUMBERS.map(([name]) => name.split('.').at(-1)).sort()).toEqual(numbers.sort());
    expect(findKitProblem(DEFAULT_KIT)).toBeNull();
  });

  it.each(NUMBERS)('%s: takes both ends of its range and nothing beyond', (name, range, kitOf) => {
    expect(findKitProblem(kitOf(range.min))).toBeNull();
    expect(findKitProblem(kitOf(range.max))).toBeNull();
    const beyond = [
      -nextUp(-range.min),
      ...(Number.isFinite(range.max) ? [nextUp(range.max)] : []),
    ];
    for (const value of beyond) {
      expect(findKitProblem(kitOf(value))).toEqual({ quantity: name, value, range });
    }
  });

  it.each(NUMBERS)('%s: names what is no number', (name, range, kitOf) => {
    for (const value of [Number.NaN, '1', null, undefined, [], {}, true, 10n]) {
      expect(findKitProblem(kitOf(value))).toEqual({ quantity: name, value, range });
    }
  });
});

describe('the numbers of a kit', () => {
  it.each(PLACED_NUMBERS.map((number) => [number.path, number] as const))(
    '%s is read where it is put, and nothing else moves',
    (path, number) => {
      const value = number.range.min;
      const moved = withNumber(DEFAULT_KIT, number, value);
      expect(numberIn(moved, number)).toBe(value);
      const others = PLACED_NUMBERS.filter((other) => other.path !== path);
      for (const other of others) {
        expect(numberIn(moved, other)).toBe(numberIn(DEFAULT_KIT, other));
      }
    },
  );

  it('belong to one part each, and make up a whole kit', () => {
    const parts = PARTS.map((part: Part) => numbersOfPart(part, DEFAULT_KIT));
    expect(Object.assign({}, ...parts)).toEqual(DEFAULT_KIT);
    const keys = parts.flatMap((part) => Object.keys(part));
    expect(new Set(keys).size).toBe(keys.length);
  });
});
