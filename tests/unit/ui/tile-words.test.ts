import { describe, expect, it } from 'vitest';
import type { Shot } from '../../../src/engine/direct/shot';
import { DEFAULT_PREFERENCES } from '../../../src/store/default-desk';
import type { Preferences } from '../../../src/store/records';
import { type InputName, tileWords } from '../../../src/ui/shot/tile-words';
import { radOf } from '../../../src/units/angle-degrees';
import { openShot } from '../state/open-shot';

function words(name: InputName, shot: Partial<Shot>, over: Partial<Preferences> = {}) {
  const preferences = { ...DEFAULT_PREFERENCES, ...over };
  const { figure, symbol, word } = tileWords(name, openShot(shot, over).model, preferences);
  return [figure, symbol, word];
}

describe('a tile', () => {
  it.each<[InputName, Partial<Shot>, string[]]>([
    ['distance', { distanceM: 1.15 }, ['1.15', 'm', 'to ghost']],
    ['cut', { cutRad: radOf(-30) }, ['30', '°', '← left']],
    ['cut', { cutRad: 0 }, ['0', '°', 'straight']],
    ['pocket', {}, ['0.50', 'm', 'mouth 116 mm']],
    ['speed', { speedMps: 2.5 }, ['2.5', 'm/s', 'firm']],
    ['raised', { elevationRad: radOf(2) }, ['2', '°', 'nearly level']],
    ['tip', { side: 0, height: 0 }, ['Centre', '', 'no side']],
  ])('%s of %o reads %o', (name, shot, told) => {
    expect(words(name, shot)).toEqual(told);
  });

  it.each<[Partial<Shot>, string[]]>([
    [{ side: 0.5, height: 0, cutRad: radOf(20) }, ['½', 'R → right', 'inside']],
    [{ side: -0.25, height: 0, cutRad: radOf(20) }, ['¼', 'R ← left', 'outside']],
    [{ side: 0.3, height: -0.2, cutRad: 0 }, ['0.3', 'R → right', '0.2 ↓ low']],
    [{ side: 0, height: 0.4 }, ['0.4', 'R', '↑ high']],
  ])('tells the tip at %o in radii to who likes them: %o', (shot, told) => {
    expect(words('tip', shot, { tipUnit: 'radii' })).toEqual(told);
  });

  // A dome of 9.5 mm on a ball of 28.575 mm: a radius moves the axis by 38.075 mm, or 2.93 tips of 13 mm.
  it.each<[Partial<Shot>, string[]]>([
    [{ side: 0.5, height: 0, cutRad: radOf(20) }, ['1½', 'tips → right', 'inside']],
    [{ side: -0.34, height: 0, cutRad: radOf(20) }, ['1', 'tip ← left', 'outside']],
    [{ side: 0.17, height: -0.17, cutRad: 0 }, ['½', 'tip → right', '½ ↓ low']],
    [{ side: 0.01, height: 0, cutRad: 0 }, ['⅛', 'tip → right', '']],
  ])('tells the tip at %o in tips of 13 mm: %o', (shot, told) => {
    expect(words('tip', shot)).toEqual(told);
  });

  it.each<[Partial<Shot>, string[]]>([
    [{ side: -0.34, height: 0 }, ['9', 'o’clock', '1 tip out']],
    [{ side: 0, height: 0.17 }, ['12', 'o’clock', '½ tip out']],
    [{ side: 0.3, height: -0.3 }, ['4:30', '', '1¼ tips out']],
  ])('tells the tip at %o by the clock: %o', (shot, told) => {
    expect(words('tip', shot, { tipUnit: 'clock' })).toEqual(told);
  });

  it('says which distance it is', () => {
    expect(words('distance', {}, { distanceFrom: 'ball-to-ball' })[2]).toBe('ball to ball');
  });
});
