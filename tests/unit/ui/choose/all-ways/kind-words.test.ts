import { describe, expect, it } from 'vitest';
import type { Goal } from '../../../../../src/engine/goal/goal';
import { NOTHING_CHOSEN } from '../../../../../src/store/saved-position';
import {
  fallWords,
  kindWords,
  wantedWords,
} from '../../../../../src/ui/choose/all-ways/kind-words';
import { diamondsWords, railPointWords } from '../../../../../src/ui/choose/all-ways/rail-words';

const told = (goal: Pick<Goal, 'kind' | 'ball' | 'via'>, doubleKiss = false) =>
  kindWords(goal, doubleKiss);

describe('words for what happens', () => {
  it('name the rails of a bank and of a kick in order', () => {
    const struck = { ball: 3, by: 'cue' } as const;
    const left = { cushion: 'left', by: 3 } as const;
    const far = { cushion: 'far', by: 3 } as const;
    expect(told({ kind: 'bank', ball: 3, via: [struck, left] })).toBe('bank off the left rail');
    expect(told({ kind: 'bank', ball: 3, via: [struck, left, far] })).toBe(
      'bank off the left, then the far rail',
    );
    expect(told({ kind: 'bank', ball: 3, via: [struck, left, struck] }, true)).toBe(
      'bank off the left rail, the cue ball meeting it twice',
    );
    expect(told({ kind: 'kick', ball: 3, via: [{ cushion: 'near', by: 'cue' }, struck] })).toBe(
      'kick off the near rail',
    );
  });

  it('tell how far a ball is cut, and call straight in what is hardly cut', () => {
    const via = [{ ball: 3, by: 'cue' }] as const;
    const goal = { kind: 'direct', ball: 3, via } as const;
    const cut = (deg: number) => kindWords(goal, false, (deg * Math.PI) / 180);
    expect(cut(45)).toBe('cut 45°');
    expect(cut(-12.4)).toBe('cut 12°');
    expect(cut(2.5)).toBe('straight in');
    expect(cut(3.4)).toBe('cut 3°');
    // Of a way that was kept the angle is not known.
    expect(told(goal)).toBe('direct');
  });

  it('name the ball between', () => {
    expect(
      told({
        kind: 'combination',
        ball: 3,
        via: [
          { ball: 5, by: 'cue' },
          { ball: 3, by: 5 },
        ],
      }),
    ).toBe('combination, the 3 off the 5');
    expect(
      told({
        kind: 'carom',
        ball: 5,
        via: [
          { ball: 3, by: 'cue' },
          { ball: 5, by: 'cue' },
        ],
      }),
    ).toBe('carom, cue ball off the 3');
    expect(
      told({
        kind: 'carom',
        ball: 3,
        via: [
          { ball: 3, by: 'cue' },
          { ball: 5, by: 3 },
        ],
      }),
    ).toBe('carom, the 3 off the 5');
  });

  it('say what falls where, and what was asked for', () => {
    expect(fallWords({ ball: 3, pocket: 'middle-left' })).toBe('The 3 into the middle left pocket');
    expect(wantedWords({ goal: NOTHING_CHOSEN })).toBe('Any ball into any pocket');
    const goal = { ...NOTHING_CHOSEN, ball: 8, pocket: 'far-right' } as const;
    expect(wantedWords({ goal, legal: 'lowest' })).toBe(
      'The 8 into the far right pocket; the lowest hit first',
    );
    expect(wantedWords({ goal: NOTHING_CHOSEN, legal: [3, 5] })).toBe(
      'Any ball into any pocket; the 3 or the 5 hit first',
    );
    expect(wantedWords({ goal: NOTHING_CHOSEN, legal: [] })).toMatch(/nothing hit first$/);
  });
});

describe('words for a point on a rail', () => {
  const at = (rail: 'left' | 'far', diamonds: number) => ({
    rail,
    diamonds,
    corner: 'far-left' as const,
    spot: { xM: 0, yM: 0 },
    awayM: 1,
  });

  it.each([
    [2.38, '2⅜ diamonds'],
    [1, '1 diamond'],
    [0.26, '¼ diamond'],
    [1.94, '2 diamonds'],
    [0.05, ''],
  ])('tell %d diamonds to the eighth', (diamonds, words) => {
    expect(diamondsWords({ diamonds })).toBe(words);
  });

  it('name rail and corner, and a pocket where that is what is pointed at', () => {
    expect(railPointWords(at('left', 2.375))).toBe(
      'the left rail’s nose, 2⅜ diamonds from the far left corner',
    );
    expect(railPointWords(at('left', 3.97))).toBe('the middle left pocket');
    expect(railPointWords(at('far', 0.02))).toBe('the far left corner');
  });
});
