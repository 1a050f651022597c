import { describe, expect, it } from 'vitest';
import type { Worth } from '../../../../../src/engine/worth/worth';
import type { Miss } from '../../../../../src/engine/worth/worth-parts';
import type { WorthyWay } from '../../../../../src/engine/worth/worthy-ways';
import {
  missSideLine,
  partsLine,
  slopeLine,
  whyLines,
  worthBeside,
} from '../../../../../src/ui/choose/all-ways/worth-words';

const MISS: Miss = { share: 0.4, theirBest: 0.3, hooked: 0, foul: 0, thin: null, full: null };

/** Invented: goes six times in ten. */
function way(worth: Partial<Worth>): WorthyWay {
  const parts = { worth: 0.5, goes: 0.6, wins: 0, after: null, miss: MISS, ...worth };
  return { worth: parts } as WorthyWay;
}

describe('what a way is worth, in words', () => {
  it('tells what comes when it goes: a shot, none, or the end', () => {
    const after = { ball: 5, pocket: 'far-left', chance: 0.97 } as const;
    expect(partsLine(way({ after }), 'figures', 'worth')).toBe(
      'goes 6 in 10 · then over 9 in 10 · theirs 3 in 10',
    );
    expect(partsLine(way({ wins: 0.6 }), 'figures', 'goes')).toBe(
      'worth 5 in 10 · then it is won · theirs 3 in 10',
    );
    expect(partsLine(way({}), 'ease', 'worth')).toBe(
      'the pot fair · then no straight shot · theirs hard',
    );
    expect(partsLine(way({ goes: 0, miss: null }), 'figures', 'worth')).toBe('goes under 1 in 10');
    expect(whyLines(way({ wins: 0.6, miss: null }), 'figures')).toEqual([
      'When it goes (6 in 10), it is won.',
    ]);
    expect(whyLines(way({}), 'ease')).toEqual([
      'When it goes, no straight shot is left.',
      'When the turn passes, theirs is hard, if they play as well.',
    ]);
  });

  it('says to which side to miss only where that is clear', () => {
    const sides = (thin: number, full: number, share = 0.5) => ({
      miss: {
        ...MISS,
        thin: { share, theirBest: thin },
        full: { share: 1 - share, theirBest: full },
      },
    });
    expect(missSideLine(sides(0.7, 0.2), 'figures')).toBe(
      'Missed thin they have 7 in 10, missed full 2 in 10: miss full.',
    );
    expect(missSideLine(sides(0.2, 0.9), 'ease')).toBe(
      'Missed thin theirs is hard, missed full easy: miss thin.',
    );
    expect(missSideLine(sides(0.2, 0.4), 'ease')).toBe('');
    expect(missSideLine(sides(0.3, 0.4), 'figures')).toBe('');
    expect(missSideLine(sides(0.2, 0.7, 0.05), 'figures')).toBe('');
    expect(missSideLine({ miss: MISS }, 'figures')).toBe('');
  });

  it('calls no way worse that the drawn strokes cannot tell from the best', () => {
    expect([0.6, 0.58, 0.5, 0.3].map((worth) => worthBeside(worth, 0.6))).toEqual([
      'best',
      'about as good',
      'not as good',
      'far less good',
    ]);
  });

  it('tells of a slope only where it turns a way, and a firmer stroke less', () => {
    expect(slopeLine({})).toBe('');
    expect(slopeLine({ slope: { turnRad: 0.001, firmerRad: 0.0006 } })).toBe('');
    expect(slopeLine({ slope: { turnRad: 0.01, firmerRad: 0.01 } })).toBe('');
    expect(slopeLine({ slope: { turnRad: 0.02, firmerRad: 0.01 } })).toMatch(/ 1\.1° .*0\.6°\.$/);
  });
});
