import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { radOf } from '../../../src/units/angle-degrees';
import { directionWord } from '../../../src/units/direction-word';
import { elevationWord } from '../../../src/units/elevation-word';
import { lateralFigure } from '../../../src/units/lateral-figure';
import { sideName } from '../../../src/units/side-name';
import { speedWord } from '../../../src/units/speed-word';

describe('the name of the side', () => {
  it.each([
    [0.4, 24, 'inside'],
    [-0.4, 24, 'outside'],
    [0.4, -24, 'outside'],
    [-0.4, -24, 'inside'],
    [0.4, 0, 'right'],
    [-0.4, 0, 'left'],
    [0, 24, 'none'],
    [0, 0, 'none'],
    [-0.001, 0.001, 'outside'],
  ])('with side %s on a cut of %s° is %s', (side, cutDeg, name) => {
    expect(sideName(side, radOf(cutDeg))).toBe(name);
  });

  it('is the same for the mirror image of a cut shot', () => {
    const nonzero = fc.double({ min: 0.001, max: 1, noNaN: true });
    fc.assert(
      fc.property(nonzero, nonzero, fc.boolean(), (side, cutRad, right) => {
        const signedSide = right ? side : -side;
        expect(sideName(signedSide, cutRad)).toBe(sideName(-signedSide, -cutRad));
      }),
    );
  });
});

describe('the word for a speed', () => {
  it.each([
    [0, 'touch'],
    [0.49, 'touch'],
    [0.5, 'soft'],
    [0.99, 'soft'],
    [1, 'medium'],
    [1.8, 'medium'],
    [2, 'firm'],
    [3, 'power'],
    [4.49, 'power'],
    [4.5, 'break'],
    [11, 'break'],
  ])('at %s m/s is %s', (speedMps, word) => {
    expect(speedWord(speedMps)).toBe(word);
  });
});

describe('the word for the height of the butt', () => {
  it.each([
    [0, 'level'],
    [0.5, 'nearly level'],
    [3, 'nearly level'],
    [4, 'slightly raised'],
    [5, 'over a rail'],
    [10, 'over a rail'],
    [10.1, 'raised'],
    [30, 'raised'],
    [45, 'steep'],
  ])('at %s° is %s', (deg, word) => {
    expect(elevationWord(radOf(deg))).toBe(word);
  });
});

describe('a sideways figure taken apart', () => {
  it('has a figure without sign, a unit and a direction', () => {
    expect(lateralFigure(-0.0256, 'mm')).toEqual({
      figure: '26',
      symbol: 'mm',
      direction: 'left',
    });
    expect(lateralFigure(0.0254, 'in')).toEqual({
      figure: '1.00',
      symbol: 'in',
      direction: 'right',
    });
  });

  it('has no direction when it shows nothing', () => {
    expect(lateralFigure(-0.0004, 'mm').direction).toBe('none');
    expect(directionWord(-0)).toBe('none');
  });
});
