import { describe, expect, it } from 'vitest';
import { gainWords, toGoWords } from '../../../../src/ui/measure/gain-words';

const GAIN = { shiftM: -0.003, beforeSdM: 0.011, nowSdM: 0.005, enoughM: 1.35, isEnough: true };

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
    expect(toGoWords(1, null)).toMatch(/^About 1 more shot until/);
    expect(toGoWords(4, null)).toMatch(/^About 4 more shots until/);
    expect(toGoWords(null, null)).toMatch(/^More than a dozen more shots until/);
    expect(toGoWords(0, 'your cue’s squirt')).toBe('Good enough for the shot on Shot.');
  });

  it('says what they are for, which need not be what comes next', () => {
    expect(toGoWords(1, 'your cue’s squirt')).toMatch(/^About 1 more shot, for your cue’s squirt/);
    expect(toGoWords(3, 'your cue’s squirt')).toMatch(/^About 3 more shots, first for your cue’s/);
  });
});
