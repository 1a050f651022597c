import { INPUT_RANGES } from '../engine/direct/input-ranges';
import { heldWithin } from '../engine/numerics/range';
import type { LaidShot } from '../store/records';
import type { Parsed } from '../units/parsed';
import { SHOT_PROBLEMS } from '../words/shot-problems';

type Numbers = { readonly [K in keyof typeof INPUT_RANGES]?: number };

/** A conversion may leave a bound by its last digit: held to it. Relative. */
const ROUNDING = 1e-9;

/** The shot with some numbers replaced, held to what the engine accepts when off by rounding. */
export function withinShot(shot: LaidShot, numbers: Numbers): Parsed<{ shot: LaidShot }> {
  const held: Record<string, number> = {};
  for (const key of Object.keys(numbers) as (keyof typeof INPUT_RANGES)[]) {
    const range = INPUT_RANGES[key];
    const value = numbers[key] ?? Number.NaN;
    const slack = ROUNDING * Math.max(Math.abs(range.min), Math.abs(range.max));
    if (!(value >= range.min - slack && value <= range.max + slack)) {
      return {
        ok: false,
        problem: 'out-of-domain',
        message: SHOT_PROBLEMS.outside,
      };
    }
    held[key] = heldWithin(range, value);
  }
  return { ok: true, value: { shot: { ...shot, ...held } } };
}
