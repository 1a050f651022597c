import { describe, expect, it } from 'vitest';
import { DEFAULT_PREFERENCES } from '../../../../src/store/default-desk';
import { entryDraft, entryInSi, openingUnit } from '../../../../src/ui/measure/entry-specs';

/** Nine feet nose to nose and WPA balls; the ball begins on the first diamonds' line. */
const TABLE = { bedLengthM: 2.54, ballRadiusM: 0.028575, firstLegM: 2.54 * (7 / 8) - 0.028575 };

describe('a figure entered', () => {
  it.each([
    ['landingM', -12, 'cm', -0.12],
    ['landingM', 0.5, 'diamonds', 0.15875],
    ['cueBallM', 3, 'in', 0.0762],
    ['distance', 1.6, 'm', 1.6],
    ['timeS', 1.62, 's', 1.62],
  ] as const)('%s of %d %s is %d in SI units', (name, value, unit, si) => {
    expect(entryInSi(name, value, unit, TABLE)).toBeCloseTo(si, 12);
  });

  it('stands on the keypad again as it was entered', () => {
    expect(entryDraft('landingM', -0.12, 'cm', TABLE)).toMatchObject({
      figure: '12',
      unit: 'cm',
      word: 'left',
    });
    expect(entryDraft('cueBallM', 0.0762, 'in', TABLE)).toMatchObject({
      figure: '3',
      unit: 'in',
      word: 'on',
    });
  });
});

describe('a run counted in diamonds', () => {
  it('is the plain distance until the first cushion', () => {
    expect(entryInSi('runM', 4, 'diamonds', TABLE)).toBeCloseTo(4 * 0.3175, 12);
  });

  it('loses two radii at each cushion, for the ball’s centre turns before the nose', () => {
    const there = 7 * 0.3175 - 0.028575;
    const back = 2.54 - 2 * 0.028575;
    expect(entryInSi('runM', 7 + 8 + 2, 'diamonds', TABLE)).toBeCloseTo(
      there + back + 2 * 0.3175 - 0.028575,
      12,
    );
  });

  it.each([3, 7.5, 12, 15.25, 24])('%d of them stand on the keypad again', (diamonds) => {
    const runM = entryInSi('runM', diamonds, 'diamonds', TABLE);
    expect(entryDraft('runM', runM, 'diamonds', TABLE).figure).toBe(`${diamonds}`);
  });
});

describe('the unit a keypad opens in', () => {
  it('is the one chosen last, where it fits', () => {
    expect(openingUnit('landingM', 'diamonds', DEFAULT_PREFERENCES)).toBe('diamonds');
    expect(openingUnit('bridgeM', 'diamonds', DEFAULT_PREFERENCES)).toBe('cm');
  });

  it('is inches for whoever reads lengths in inches', () => {
    expect(openingUnit('landingM', null, { ...DEFAULT_PREFERENCES, lengthUnit: 'in' })).toBe('in');
  });

  it('is seconds for a time, whatever was chosen last', () => {
    expect(openingUnit('timeS', 'in', DEFAULT_PREFERENCES)).toBe('s');
  });
});
