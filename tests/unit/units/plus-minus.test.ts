import { describe, expect, it } from 'vitest';
import { agoWords, dayWords } from '../../../src/units/ago-words';
import { LENGTH_UNITS, lengthInUnit } from '../../../src/units/length-unit';
import { plusMinus, spreadFigure } from '../../../src/units/plus-minus';

const DAY_MS = 86_400_000;

describe('a figure with its standard deviation', () => {
  // By hand, by the rule of one leading digit, two where it is a 1.
  it.each([
    [2.512, 0.74, '2.5 ± 0.7'],
    [0.1714, 0.0121, '0.171 ± 0.012'],
    [22.4, 8.1, '22 ± 8'],
    [22.4, 12.3, '22 ± 12'],
    [-0.04, 0.2, '0.0 ± 0.2'],
    [-1.26, 0.2, '−1.3 ± 0.2'],
  ])('%d with %d is "%s"', (value, sd, words) => {
    expect(plusMinus(value, sd)).toBe(words);
  });
});

describe('a deviation by itself', () => {
  it.each([
    [0.0053, 'mm', '±5'],
    [-0.0053, 'mm', '±5'],
    [0.0004, 'mm', 'under ±1'],
    [0.0004, 'in', '±0.02'],
    [0.0001, 'in', 'under ±0.01'],
  ] as const)('of %d m in %s is "%s"', (sdM, unit, words) => {
    expect(spreadFigure(lengthInUnit(sdM, unit), LENGTH_UNITS[unit])).toBe(words);
  });
});

describe('how long ago', () => {
  it.each([
    [-5, 'today'],
    [0.9, 'today'],
    [1.2, 'yesterday'],
    [13, '13 days ago'],
    [35, '5 weeks ago'],
    [152, '5 months ago'],
    [800, '2 years ago'],
  ])('%d days is "%s"', (days, words) => {
    expect(agoWords(days * DAY_MS)).toBe(words);
  });

  it('names the year of a day only where it is another', () => {
    const march = new Date(2026, 2, 3, 12).getTime();
    expect(dayWords(march, march + 20 * DAY_MS)).toBe('3 Mar');
    expect(dayWords(march, march + 400 * DAY_MS)).toBe('3 Mar 2026');
  });
});
