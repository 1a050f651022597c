import { describe, expect, it } from 'vitest';
import { outOfRange, refusal } from '../../../../src/engine/direct/refusal';
import { refusalWords } from '../../../../src/words/refusal-words';
import { SHOT_REASONS } from '../../../harness/refusal-reasons';

describe('refusal', () => {
  it.each(SHOT_REASONS)('%s: one sentence of what is, one of what would help', (reason) => {
    const { message, remedy } = refusalWords(refusal(reason));
    for (const words of [message, remedy]) expect(words).toMatch(/^[A-Z][^.]*\.$/);
  });

  it('has words of its own for each reason', () => {
    const messages = SHOT_REASONS.map((reason) => refusalWords(refusal(reason)).message);
    expect(new Set(messages).size).toBe(SHOT_REASONS.length);
  });

  it('names the input only where one is to blame', () => {
    expect('field' in refusal('too-thin')).toBe(false);
    expect(refusal('stops-short', 'speedMps').field).toBe('speedMps');
  });

  // What must be done about it: the word for the input that helps.
  it.each<[(typeof SHOT_REASONS)[number], RegExp]>([
    ['beyond-miscue-limit', /nearer the centre/],
    ['never-stops', /less slope/],
    ['stops-short', /firmer/],
    ['curves-away', /less side/],
    ['too-thin', /fuller/],
    ['flies-over', /Lower the cue/],
    ['misses', /aim/],
    ['object-ball-cannot-reach', /firmer/],
  ])('%s: the remedy is %s', (reason, words) => {
    expect(refusalWords(refusal(reason)).remedy).toMatch(words);
  });
});

it('outOfRange tells the field, what it may be, and the quantity where there are several', () => {
  const range = { min: 0, max: 1 };
  expect(outOfRange('side', range)).toEqual({
    ok: false,
    reason: 'out-of-range',
    field: 'side',
    range,
  });
  expect(outOfRange('kit', range, 'slideFriction').quantity).toBe('slideFriction');
});
