import { describe, expect, it } from 'vitest';
import type { KnownFigure } from '../../../../src/engine/player/learn';
import {
  dayHeading,
  resultsOf,
  resultWords,
  shotLine,
  timeWords,
} from '../../../../src/ui/log/log-words';
import { crossingWords, testLines, testStanding } from '../../../../src/ui/log/test-words';
import { radOf } from '../../../../src/units/angle-degrees';
import { LAID_SHOT, PLAIN_SHOT } from '../../../store/invented-players';
import { inventedPlayer } from '../../state/player/open-player';
import { readIn } from '../read-in';

const METRES = { distanceUnit: 'm' } as const;
const figure = (value: number, by: number): KnownFigure => ({
  value,
  low: value - by,
  high: value + by,
});

describe('a logged shot in words', () => {
  it('is told by cut, distance, tip, speed, and the pocket where it is known', () => {
    expect(shotLine(LAID_SHOT, METRES, 2.54)).toBe(
      'cut 24° → right, 0.70 m, high, left side, medium, far right pocket',
    );
    const plain = { ...PLAIN_SHOT.shot, cutRad: 0, side: 0.02, height: 0, speedMps: 4 };
    expect(shotLine({ shot: plain, position: null }, METRES, 2.54)).toBe(
      'straight, 0.70 m, centre, power',
    );
  });

  it('can have gone thin or full on a cut, left or right where nobody sees one', () => {
    const cut = (cutRad: number) => resultsOf({ ...PLAIN_SHOT.shot, cutRad });
    expect(cut(radOf(-2.1))).toEqual(['went', 'thin', 'full', 'short', 'untouched']);
    expect(cut(radOf(-1.9))).toEqual(['went', 'left', 'right', 'short', 'untouched']);
  });

  // A ball cut too much to the right passes right of the pocket; one cut too little, left.
  it.each([
    ['thin', 1.5, 'Passed right'],
    ['full', 1.5, 'Passed left'],
    ['thin', -1.5, 'Passed left'],
    ['full', -1.5, 'Passed right'],
    ['left', 1.5, 'Passed left'],
    ['thin', 24, 'Too thin'],
    ['went', 1.5, 'Went'],
  ] as const)('that is kept as %s at a cut of %d° reads "%s"', (result, cutDeg, words) => {
    const shot = { ...PLAIN_SHOT.shot, cutRad: radOf(cutDeg) };
    expect(resultWords({ result, shot })).toBe(words);
  });

  it('has its day and time by the reader’s clock, where they are known', () => {
    const atMs = new Date(2026, 4, 3, 9, 5).getTime();
    expect(dayHeading(atMs, new Date(2026, 4, 3, 23).getTime())).toBe('Today');
    expect(dayHeading(atMs, new Date(2026, 4, 4, 1).getTime())).toBe('3 May');
    expect(timeWords(atMs)).toBe('09:05');
    expect([dayHeading(0, atMs), timeWords(0)]).toEqual(['Day not known', '']);
  });
});

describe('the level test in words', () => {
  it('says of every ball on which diamonds it lies', () => {
    const bed = { lengthM: 2.4, widthM: 1.2 };
    expect(crossingWords({ xM: 0, yM: 0.6 }, bed)).toBe(
      'second diamond from the left, sixth from the break end',
    );
    expect(crossingWords({ xM: 0.3, yM: -0.9 }, bed)).toBe(
      'third diamond from the left, first from the break end',
    );
  });

  it('tells line, lean and speed, and of the last two only what is clear', () => {
    const known = inventedPlayer({ madeOf10: null, shots: [] });
    const none = figure(0, 0.001);
    const bias = { ...known.bias, speedShare: figure(0.12, 0.05) };
    const app = readIn('mm');
    const lines = testLines(
      app,
      { ...known, bias, lineRad: figure(0.003, 0.001) },
      { straight: none, cutLeft: figure(0.001, 0.0004), cutRight: none },
    );
    expect(lines).toEqual([
      // 2.54 m × tan 0.003 is 7.6 mm.
      'A table length on, two of three shots are off their line by less than 8\u00a0mm (as far as is known 5 to 10\u00a0mm; 0.17°).',
      'Your line leans a touch full on cuts to the left.',
      'You hit 12 % harder than meant.',
    ]);
    const unclear = { ...known, bias: { ...bias, speedShare: figure(0.12, 0.2) } };
    const [, lean, speed] = testLines(app, unclear, {
      straight: none,
      cutLeft: none,
      cutRight: none,
    });
    expect(lean).toMatch(/^No lean/);
    expect(speed).toMatch(/^Your speed is neither/);
  });

  it('says how it stands', () => {
    const done = { id: 'a', begunAtMs: 0, shots: [], isDone: true };
    const DAY_MS = 24 * 60 * 60 * 1000;
    expect(testStanding([], 0)).toMatch(/^Fifteen shots .* months later whether it got finer/);
    expect(testStanding([done], 3 * DAY_MS)).toBe('Done once, last 3 days ago.');
    const left = { ...done, isDone: false, shots: [PLAIN_SHOT] };
    expect(testStanding([done, left], 0)).toMatch(/^1 of 15 played/);
  });
});
