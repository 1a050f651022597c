import { describe, expect, it } from 'vitest';
import type { Worth } from '../../../../../src/engine/worth/worth';
import type { Miss } from '../../../../../src/engine/worth/worth-parts';
import type { WorthyWay } from '../../../../../src/engine/worth/worthy-ways';
import type { Telling } from '../../../../../src/ui/chance-telling';
import {
  isByLuck,
  partsLine,
  slopeLine,
  whyLines,
  worthBeside,
} from '../../../../../src/ui/choose/all-ways/worth-words';

const MISS: Miss = { share: 0.4, theirBest: 0.3, hooked: 0, foul: 0, thin: null, full: null };

/** Invented: goes six times in ten. */
function way(worth: Partial<Worth>): WorthyWay {
  const parts = { worth: 0.5, goes: 0.6, wins: 0, after: null, miss: MISS, ...worth };
  return { worth: parts, clean: 1, scratch: 0, asTold: 1 } as WorthyWay;
}

describe('what a way is worth, in words', () => {
  it('tells what comes when it goes: a shot, none, or the end', () => {
    const after = { ball: 5, pocket: 'far-left', chance: 0.97 } as const;
    expect(partsLine(way({ after }), 'figures', 'worth')).toBe(
      'goes 6 in 10 · then yours over 9 in 10 · else theirs 3 in 10',
    );
    expect(partsLine(way({ wins: 0.6 }), 'figures', 'goes')).toBe(
      'worth 5 in 10 · then it is won · else theirs 3 in 10',
    );
    expect(partsLine(way({}), 'ease', 'worth')).toBe(
      'the pot fair · then no straight shot · else theirs hard',
    );
    expect(partsLine(way({ goes: 0, miss: null }), 'figures', 'worth')).toBe('goes under 1 in 10');
    expect(whyLines(way({ wins: 0.6, miss: null }), 'figures')).toEqual([
      'When it goes, 6 in 10 times, it is won.',
    ]);
    expect(whyLines(way({}), 'ease')).toEqual([
      'When it goes, no straight shot is left.',
      'When the turn passes to them, their best shot is hard, if they play as well.',
    ]);
  });

  it('says to which side to miss only where that is clear', () => {
    const told = (miss: Partial<Miss>, telling: Telling) =>
      whyLines(way({ miss: { ...MISS, ...miss } }), telling).filter((line) => /issed/.test(line));
    const sides = (thin: number, full: number, share = 0.5) => ({
      thin: { share, theirBest: thin },
      full: { share: 1 - share, theirBest: full },
    });
    expect(told(sides(0.7, 0.2), 'figures')).toEqual([
      'Missed thin they have 7 in 10, missed full 2 in 10: miss full.',
    ]);
    expect(told(sides(0.2, 0.9), 'ease')).toEqual([
      'Missed thin theirs is hard, missed full easy: miss thin.',
    ]);
    expect(told(sides(0.2, 0.4), 'ease')).toEqual([]);
    expect(told(sides(0.33, 0.37), 'figures')).toEqual([]);
    expect(told(sides(0.2, 0.7, 0.05), 'figures')).toEqual([]);
    expect(told({}, 'figures')).toEqual([]);
  });

  it('tells of those that go how many scratch, beside how often it goes', () => {
    const scratching = { ...way({ goes: 0.97 }), clean: 0.7, scratch: 0.3 };
    expect(partsLine(scratching, 'figures', 'worth')).toMatch(
      /^goes over 9 in 10, of these 3 in 10 scratch · then /,
    );
    expect(partsLine(scratching, 'ease', 'worth')).toMatch(/^the pot easy · then /);
  });

  it('calls luck what goes mostly by another way than the one that is drawn', () => {
    expect(isByLuck({ asTold: 0.5 })).toBe(false);
    expect(isByLuck({ asTold: 0.49 })).toBe(true);
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
