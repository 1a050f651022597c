import { describe, expect, it } from 'vitest';
import { forgivenWords, gainWords, toGoWords } from '../../../../src/ui/measure/gain-words';
import { LINE } from '../../state/measure/open-measure';

const GAIN = { shiftM: -0.003, beforeSdM: 0.011, nowSdM: 0.005, enoughM: 1.35, isEnough: true };

const words = (shots: number | null) => toGoWords({ shots, first: null });

describe('what a trial did to the aim', () => {
  it('is told by how far it moved, how sure it is, and for how far that does', () => {
    expect(gainWords(GAIN, 'mm', 2.54)).toEqual({
      shift: '3 mm left of before',
      sureness: 'now ±5 mm, was ±11',
      enough: 'good enough for 4 diamonds',
    });
  });

  it('says so where it stays, where it does for all of the table, and where for next to nothing', () => {
    expect(gainWords({ ...GAIN, shiftM: 0.0002 }, 'mm', 2.54).shift).toBe('Where it was');
    expect(gainWords({ ...GAIN, enoughM: 2.6 }, 'mm', 2.54).enough).toContain(
      'length of the table',
    );
    expect(gainWords({ ...GAIN, enoughM: 0.1 }, 'mm', 2.54).enough).toContain('not good enough');
  });

  it('is told in inches where those are liked', () => {
    expect(gainWords({ ...GAIN, shiftM: 0.0254 }, 'in', 2.54).shift).toBe(
      '1.00 in right of before',
    );
  });

  it('says how many more shots it takes, one, some or too many to tell', () => {
    expect(words(1)).toMatch(/^About 1 more shot until/);
    expect(words(4)).toMatch(/^About 4 more shots until/);
    expect(words(null)).toMatch(/^About 12 or more shots until/);
    expect(words(0)).toBe('✓ Good enough for the shot you have.');
  });

  it('says of a kit that nobody has measured that the shot forgives it, and from where it would not', () => {
    // 1.35 m are 4¼ of the 8 diamonds of 2.54 m.
    expect(forgivenWords(1.35, 2.54)).toMatch(/forgives it; from 4½ diamonds on it would not\.$/);
    expect(forgivenWords(2.6, 2.54)).toMatch(/forgives it, however far/);
  });

  it('says what the one offered next is for', () => {
    const first = { shot: LINE, teaches: 'massRatio' } as const;
    expect(toGoWords({ shots: 2, first })).toMatch(
      /you have\. The next is for your cue’s squirt\.$/,
    );
  });

  it('says so where the last shot brought it no nearer', () => {
    const since = (before: number | null, shots: number | null) =>
      toGoWords({ shots, first: null }, before);
    expect(since(2, 2)).toBe(
      'About 2 more shots until good enough for the shot you have. As before: this helped little.',
    );
    expect(since(null, null)).toMatch(
      /^About 12 or more shots .* As before: this helped little\.$/,
    );
    expect(since(2, 1)).toMatch(/^About 1 more shot until [^.]*\.$/);
    expect(since(null, 9)).toMatch(/^About 9 more shots until [^.]*\.$/);
    expect(since(1, 0)).toBe('✓ Good enough for the shot you have.');
  });
});
