import { describe, expect, it } from 'vitest';
import { DEGREES } from '../../../src/units/angle-degrees';
import { checkRange } from '../../../src/units/check-range';
import { DISTANCE_UNITS } from '../../../src/units/distance-unit';
import { parseNumber } from '../../../src/units/parse-number';

describe('checking a figure against its range', () => {
  it('takes the bounds themselves', () => {
    const range = { min: 0, max: 75 };
    expect(checkRange(0, range, DEGREES)).toEqual({ ok: true, value: 0 });
    expect(checkRange(75, range, DEGREES)).toEqual({ ok: true, value: 75 });
  });

  it('names the bound that was passed', () => {
    const range = { min: 0, max: 75 };
    expect(checkRange(-1, range, DEGREES)).toEqual({
      ok: false,
      problem: 'too-small',
      message: 'The least is 0°.',
    });
    expect(checkRange(80, range, DEGREES)).toEqual({
      ok: false,
      problem: 'too-large',
      message: 'The most is 75°.',
    });
  });

  it('shows a bound that can be typed back', () => {
    const range = { min: 0.0571, max: 4.1077 };
    for (const outside of [0, 9]) {
      const refusal = checkRange(outside, range, DISTANCE_UNITS.m);
      const figure = refusal.ok ? '' : (/[\d.]+\d/.exec(refusal.message)?.[0] ?? '');
      const typed = parseNumber(figure);
      expect(typed.ok && checkRange(typed.value, range, DISTANCE_UNITS.m).ok).toBe(true);
    }
  });

  it('refuses what is no number', () => {
    expect(checkRange(Number.NaN, { min: 0, max: 1 }, DEGREES).ok).toBe(false);
  });
});
