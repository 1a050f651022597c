import { describe, expect, it } from 'vitest';
import {
  draftText,
  type KeypadDraft,
  keyed,
  parseDraft,
  signedFigure,
} from '../../../../src/ui/measure/keypad-draft';

const blank: KeypadDraft = { figure: '', unit: 'cm', word: '' };
const pressed = (...keys: string[]) => keys.reduce(keyed, blank).figure;

describe('the keys of a keypad', () => {
  it('write a figure digit by digit', () => {
    expect(pressed('1', '2', '.', '5')).toBe('12.5');
  });

  it('lead a point with a nought and take no second one', () => {
    expect(pressed('.', '5', '.', '2')).toBe('0.52');
  });

  it('write no leading nought', () => {
    expect(pressed('0', '0', '7')).toBe('7');
  });

  it('delete the last digit, and on an empty figure the way', () => {
    expect(keyed({ ...blank, figure: '12' }, 'delete').figure).toBe('1');
    expect(keyed({ ...blank, word: 'left' }, 'delete').word).toBe('');
  });

  it('begin anew on a figure that was put there whole, but for the deleting one', () => {
    const whole: KeypadDraft = { figure: '7.9', unit: 'cm', word: 'left', isWhole: true };
    expect(keyed(whole, '7')).toEqual({ figure: '7', unit: 'cm', word: 'left' });
    expect(keyed(whole, '.').figure).toBe('0.');
    expect(keyed(keyed(whole, '7'), '5').figure).toBe('75');
    expect(keyed(keyed(whole, 'delete'), '5').figure).toBe('7.5');
  });

  it('stop before a figure grows past reading', () => {
    expect(pressed(...'123456789')).toBe('1234567');
  });
});

describe('what stands on a keypad', () => {
  it.each<KeypadDraft>([
    { figure: '0.75', unit: 'diamonds', word: 'left' },
    { figure: '1.', unit: 'cm', word: '' },
    { figure: '', unit: 'in', word: 'on' },
    { figure: '1.62', unit: 's', word: 'tapped' },
    { figure: '7.9', unit: 'cm', word: 'left', isWhole: true },
    { figure: '0', unit: 'cm', word: '', isWhole: true },
    blank,
  ])('is read back as it was kept: %o', (draft) => {
    expect(parseDraft(draftText(draft), 'mm')).toEqual(draft);
  });

  it('is kept so that a person can read it', () => {
    expect(draftText({ figure: '0.75', unit: 'diamonds', word: 'left' })).toBe(
      '0.75 diamonds left',
    );
  });

  it.each([null, '', 'twelve', 'x y z'])('is blank in the given unit after %j', (text) => {
    expect(parseDraft(text, 'mm')).toEqual({ figure: '', unit: 'mm', word: '' });
  });

  it.each([
    ['left', -12],
    ['right', 12],
    ['back', -12],
    ['on', 12],
    ['', 12],
  ] as const)('counts as minus to the left and back: %s', (word, value) => {
    expect(signedFigure({ figure: '12', unit: 'cm', word })).toEqual({ ok: true, value });
  });

  it('counts while its last key was the point', () => {
    expect(signedFigure({ figure: '3.', unit: 'cm', word: '' })).toEqual({ ok: true, value: 3 });
  });

  it('is refused while it is empty', () => {
    expect(signedFigure(blank).ok).toBe(false);
  });
});
