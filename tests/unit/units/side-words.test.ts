import { describe, expect, it } from 'vitest';
import { figureWithSide, parseWithSide, quantityWithSide } from '../../../src/units/side-words';
import { tipScale } from '../../../src/units/tip-unit';

const ON = { ballRadiusM: 0.028575, tipRadiusM: 0.0095 };
const FACTS = { ...tipScale('tips', ON).facts, sides: { plus: 'right', minus: 'left' } };
const RADII = { ...tipScale('radii', ON).facts, sides: { plus: 'right', minus: 'left' } };

describe('a figure with a side', () => {
  it.each([
    [-0.5, '½ left', '½ tip left'],
    [1.5, '1½ right', '1½ tips right'],
    [0, '0', '0 tips'],
    [-0.001, '0', '0 tips'],
  ])('%f has the word in place of a sign', (value, figure, quantity) => {
    expect(figureWithSide(value, FACTS)).toBe(figure);
    expect(quantityWithSide(value, FACTS)).toBe(quantity);
  });

  it.each([
    ['½ left', -0.5],
    ['0.4 l', -0.4],
    ['1 1/2 tips right', 1.5],
    ['½ tip left', -0.5],
    ['-0.4', -0.4],
    ['0.4', 0.4],
  ])('is read from "%s"', (text, value) => {
    expect(parseWithSide(text, FACTS)).toEqual({ ok: true, value });
  });

  it('does not take the letter of radii for a side', () => {
    expect(parseWithSide('0.4 R', RADII)).toEqual({ ok: true, value: 0.4 });
    expect(parseWithSide('0.4 R left', RADII)).toEqual({ ok: true, value: -0.4 });
  });

  it('is refused where it is no number', () => {
    expect(parseWithSide('some left', FACTS).ok).toBe(false);
    expect(parseWithSide('left', FACTS).ok).toBe(false);
  });
});
