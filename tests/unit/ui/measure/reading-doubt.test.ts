import { describe, expect, it } from 'vitest';
import { doubtOf, SECOND_LOOK, verdictWords } from '../../../../src/ui/measure/reading-doubt';

const counts = { isStruckOut: false };
const likely = { isDoubtful: false };
const read = (deviations: number) => ({
  name: 'landingM' as const,
  read: -0.008 + deviations * 0.015,
  expected: -0.008,
  sd: 0.015,
});

describe('the verdict on an attempt', () => {
  it('voices a doubt of a reading beyond what nineteen of twenty keep to, to either side', () => {
    for (const far of [2.5, -2.5]) {
      const doubt = doubtOf(likely, [read(0), read(far)], counts);
      expect(verdictWords(doubt)).toContain('Far from what was expected: look at it again');
      expect(SECOND_LOOK).toContain(doubt);
    }
  });

  it('voices none of one within, nor as long as nothing is known of what was expected', () => {
    for (const beside of [[read(1.9)], [], [{ ...read(9), expected: null }]]) {
      const doubt = doubtOf(likely, beside, counts);
      expect(verdictWords(doubt)).toBe('It counts.');
      expect(SECOND_LOOK).not.toContain(doubt);
    }
  });

  it('says first what matters more: struck out, of another kit, a slip', () => {
    const far = [read(2.5)];
    expect(verdictWords(doubtOf(null, far, { isStruckOut: true }))).toContain('Struck out');
    expect(verdictWords(doubtOf(null, far, counts))).toContain('not of the kit in play');
    expect(verdictWords(doubtOf({ isDoubtful: true }, far, counts))).toContain('slip');
  });
});
