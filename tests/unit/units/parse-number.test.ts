import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatNumber } from '../../../src/units/format-number';
import { parseNumber } from '../../../src/units/parse-number';
import type { UnitFacts } from '../../../src/units/unit-facts';

describe('reading a number a person typed', () => {
  it.each([
    ['1.15', 1.15],
    ['1,15', 1.15],
    ['.5', 0.5],
    [',5', 0.5],
    ['7.', 7],
    ['007', 7],
    ['½', 0.5],
    ['⅛', 0.125],
    ['⅔', 2 / 3],
    ['3½', 3.5],
    ['3 ½', 3.5],
    ['1/2', 0.5],
    ['1⁄2', 0.5],
    ['1 / 2', 0.5],
    [' 3 1/2 ', 3.5],
    ['3+1/2', 3.5],
    ['3\u00a01/2', 3.5],
    ['-0.4', -0.4],
    ['−0,4', -0.4],
    ['–2', -2],
    ['- 2', -2],
    ['+2', 2],
    ['-3 1/2', -3.5],
    ['-½', -0.5],
    ['-0', 0],
    ['5/4', 1.25],
  ])('reads %j', (text, value) => {
    expect(parseNumber(text)).toEqual({ ok: true, value });
  });

  it.each([
    ['1.15 m', 'm', 1.15],
    ['24°', '°', 24],
    ['3⅝ diamonds', 'diamonds', 3.625],
    ['1.8m/s', 'm/s', 1.8],
  ])('passes over a unit behind the number: %j', (text, symbol, value) => {
    expect(parseNumber(text, symbol)).toEqual({ ok: true, value });
  });

  it.each([
    ['', 'empty'],
    ['   ', 'empty'],
    ['m', 'empty', 'm'],
    ['abc', 'not-a-number'],
    ['1.2.3', 'not-a-number'],
    ['1,234.5', 'not-a-number'],
    ['1e3', 'not-a-number'],
    ['0x10', 'not-a-number'],
    ['NaN', 'not-a-number'],
    ['Infinity', 'not-a-number'],
    ['--1', 'not-a-number'],
    ['-', 'not-a-number'],
    ['.', 'not-a-number'],
    ['1/', 'not-a-number'],
    ['1/2/3', 'not-a-number'],
    ['1.5/2', 'not-a-number'],
    ['½½', 'not-a-number'],
    ['1.5 km', 'not-a-number', 'in'],
    ['9'.repeat(400), 'not-a-number'],
    ['1/0', 'zero-denominator'],
    ['2 1/0', 'zero-denominator'],
  ])('says kindly what is wrong with %j', (text, problem, symbol = '') => {
    const parsed = parseNumber(text, symbol);
    expect(parsed).toMatchObject({ ok: false, problem });
    expect(!parsed.ok && parsed.message).toMatch(/^[A-Z][^\n]{5,60}\.$/);
  });

  it('gives a finite number or a problem for any text at all', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), fc.string(), (text, symbol) => {
        const parsed = parseNumber(text, symbol);
        expect(parsed.ok ? Number.isFinite(parsed.value) : parsed.message.length > 0).toBe(true);
      }),
    );
  });

  it('reads back what is shown, decimals or eighths', () => {
    const facts = (eighths: boolean): UnitFacts => ({
      symbol: '',
      name: '',
      spaced: false,
      fineStep: 1,
      coarseStep: 1,
      decimals: 3,
      leastDecimals: 0,
      eighths,
    });
    const figure = fc.oneof(
      fc.integer({ min: -99_999, max: 99_999 }).map((count) => count / 1000),
      fc.integer({ min: -800, max: 800 }).map((count) => count / 8),
    );
    fc.assert(
      fc.property(figure, fc.boolean(), (value, eighths) => {
        const shown = formatNumber(value, facts(eighths));
        expect(parseNumber(shown)).toEqual({ ok: true, value: value === 0 ? 0 : value });
      }),
    );
  });
});
