import { describe, expect, it } from 'vitest';
import type { Shot } from '../../../src/engine/direct/shot';
import { type InputName, tileWords } from '../../../src/ui/shot/tile-words';
import { radOf } from '../../../src/units/angle-degrees';
import { openShot } from '../state/open-shot';

function words(name: InputName, shot: Partial<Shot>) {
  const { figure, symbol, word } = tileWords(name, openShot(shot).model, 'ghost-ball');
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
    ['tip', { side: 0.5, height: 0, cutRad: radOf(20) }, ['½', 'R', '→ right, inside']],
    ['tip', { side: -0.25, height: 0, cutRad: radOf(20) }, ['¼', 'R', '← left, outside']],
    ['tip', { side: 0.3, height: -0.2, cutRad: 0 }, ['0.3', 'R', '→ right, 0.2 R ↓ low']],
    ['tip', { side: 0, height: 0.4 }, ['0.4', 'R', '↑ high']],
  ])('%s of %o reads %o', (name, shot, told) => {
    expect(words(name, shot)).toEqual(told);
  });

  it('says which distance it is', () => {
    const { model } = openShot({}, { distanceFrom: 'ball-to-ball' });
    expect(tileWords('distance', model, 'ball-to-ball').word).toBe('ball to ball');
  });
});
