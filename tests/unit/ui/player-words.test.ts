import { describe, expect, it } from 'vitest';
import type { KnownFigure } from '../../../src/engine/player/learn';
import type { KnownPlayer } from '../../../src/engine/player/player-report';
import { easeWords } from '../../../src/ui/chance-telling';
import { knownWords, standingWords, strayWords } from '../../../src/ui/player/learnt-words';
import { forWords } from '../../../src/ui/player/player-words';
import { radOf } from '../../../src/units/angle-degrees';
import { NEWCOMER, STUDENT } from '../../store/invented-players';
import { readIn } from './read-in';

const figure = (...deg: readonly [number, number, number]): KnownFigure => {
  const [value, low, high] = deg.map(radOf) as [number, number, number];
  return { value, low, high };
};
const YOU = { ...STUDENT, name: 'You' };
const NONE = figure(0.01, -0.05, 0.06);
const known = (shots: number) =>
  ({ shots, lineRad: figure(0.15, 0.11, 0.2) }) as unknown as KnownPlayer;
const LEVEL = { straight: NONE, cutLeft: NONE, cutRight: NONE };

const APP = readIn('mm');
/** 2.54 m times the tangents of 0.15°, 0.11° and 0.20°: 6.6, 4.9 and 8.9 mm. */
const STRAY =
  'a table length on, two of three shots are off their line by less than 7\u00a0mm (as far as is known 5 to 9\u00a0mm; 0.15°)';

describe('words for what is known of a player', () => {
  it('say from what, how far the line scatters, and nothing of a lean that is not clear', () => {
    expect(knownWords(APP, known(43), LEVEL, NEWCOMER)).toBe(`From 43 shots: ${STRAY}.`);
    expect(knownWords(APP, known(0), LEVEL, YOU)).toMatch(/^From 6 made of 10: a table length on/);
    expect(knownWords(APP, known(1), LEVEL, STUDENT)).toMatch(/^From 6 made of 10 and 1 shot: /);
  });

  it.each([
    ['cm', '0.7', '0.5 to 0.9'],
    ['in', '0.26', '0.19 to 0.35'],
  ] as const)('tell how far the line strays in %s where that is read', (unit, far, ends) => {
    const line = { ...known(43).lineRad };
    expect(strayWords(readIn(unit), line)).toContain(
      `less than ${far}\u00a0${unit} (as far as is known ${ends}\u00a0${unit}; 0.15°)`,
    );
  });

  it.each<[string, Partial<typeof LEVEL>]>([
    ['a touch full on cuts to the left', { cutLeft: figure(0.1, 0.02, 0.2) }],
    ['thin on cuts to the right', { cutRight: figure(-0.2, -0.3, -0.1) }],
    [
      'a touch full on cuts',
      { cutLeft: figure(0.1, 0.02, 0.2), cutRight: figure(0.08, 0.01, 0.2) },
    ],
    [
      'a touch full on cuts to the left, a touch thin on cuts to the right',
      { cutLeft: figure(0.1, 0.02, 0.2), cutRight: figure(-0.08, -0.2, -0.01) },
    ],
    ['a touch right on straight ones', { straight: figure(0.05, 0.01, 0.1) }],
    ['left on straight ones', { straight: figure(-0.3, -0.4, -0.1) }],
  ])('tell its lean apart from that: %s', (lean, leans) => {
    expect(knownWords(APP, known(43), { ...LEVEL, ...leans }, NEWCOMER)).toBe(
      `From 43 shots: ${STRAY}. Their line leans ${lean}.`,
    );
    expect(knownWords(APP, known(43), { ...LEVEL, ...leans }, YOU)).toContain(
      `. Your line leans ${lean}.`,
    );
  });

  it('call whoever plays by their name, or you, and cut a long one short where they must', () => {
    expect(forWords(YOU)).toBe('you');
    expect(forWords(STUDENT)).toBe(STUDENT.name);
    expect(forWords(STUDENT, 8)).toBe('Student…');
  });

  it('say in a list where somebody stands', () => {
    const all = (shots: number) => ({ shots, notMeant: 0 });
    expect(standingWords(NEWCOMER, all(0))).toBe('nothing known yet');
    expect(standingWords(STUDENT, all(0))).toBe('6 of 10');
    expect(standingWords(STUDENT, all(2))).toBe('6 of 10, 2 shots');
    expect(standingWords(NEWCOMER, all(1))).toBe('1 shot');
    expect(standingWords(NEWCOMER, { shots: 7, notMeant: 1 })).toBe(
      '7 shots, 6 learnt from: 1 not as meant',
    );
  });

  it('say in one word how hard a shot is for most', () => {
    expect([0.95, 0.6, 0.2].map(easeWords)).toEqual(['easy', 'fair', 'hard']);
  });
});
