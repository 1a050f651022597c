import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { describeOnObjectBall } from '../../../src/units/on-object-ball';

const R = 0.028575;
const widths = (count: number) => count * 2 * R;

describe('a sideways figure told on the object ball', () => {
  it.each([
    [0, 'through the centre'],
    [0.05, 'through the centre'],
    [-0.06, 'through the centre'],
    [0.125, 'an eighth of a ball right of centre'],
    [-0.25, 'a quarter ball left of centre'],
    [-0.27, 'a quarter ball left of centre'],
    [0.375, 'three eighths of a ball right of centre'],
    [-0.5, 'at the left edge'],
    [0.52, 'at the right edge'],
    [0.625, 'an eighth of a ball outside the right edge'],
    [-0.75, 'a quarter ball outside the left edge'],
    [0.9, 'three eighths of a ball outside the right edge'],
    [-1, 'half a ball outside the left edge'],
    [1.25, 'three quarters of a ball outside the right edge'],
    [1.375, 'seven eighths of a ball outside the right edge'],
    [-1.5, 'a whole ball outside the left edge'],
    [-1.625, '1⅛ balls outside the left edge'],
    [2, '1½ balls outside the right edge'],
    [2.5, '2 balls outside the right edge'],
    [-3.25, '2¾ balls outside the left edge'],
    [3.5, '3 balls outside the right edge'],
    [5.7, '5.3 balls outside the right edge'],
  ])('says at %s ball widths: %s', (count, words) => {
    expect(describeOnObjectBall(widths(count), R).words).toBe(words);
  });

  it('keeps the exact figure', () => {
    expect(describeOnObjectBall(widths(-0.27), R).ballWidths).toBeCloseTo(-0.27, 12);
  });

  it('says the mirror image with the other word', () => {
    const swap = (words: string) =>
      words.replace(/left|right/g, (word) => (word === 'left' ? 'right' : 'left'));
    fc.assert(
      fc.property(fc.double({ min: -6, max: 6, noNaN: true }), (count) => {
        const one = describeOnObjectBall(widths(count), R);
        const other = describeOnObjectBall(widths(-count), R);
        expect(other.words).toBe(swap(one.words));
        expect(other.place).toBe(one.place);
      }),
    );
  });

  it('never names the edge from inside as outside, nor leaves a word out', () => {
    fc.assert(
      fc.property(fc.double({ min: -6, max: 6, noNaN: true }), (count) => {
        const { words, place, side } = describeOnObjectBall(widths(count), R);
        expect(words).not.toMatch(/undefined| {2}|^ /);
        expect(words.includes('outside')).toBe(place === 'outside');
        expect(place === 'outside' ? Math.abs(count) > 0.5 : Math.abs(count) < 0.5625).toBe(true);
        expect(side === 'none' ? place === 'centre' : words.includes(side)).toBe(true);
      }),
    );
  });
});
