import { describe, expect, it } from 'vitest';
import { outOfRange, refusal } from '../../../../src/engine/aim/refusal';
import { SHOT_REASONS } from '../../../harness/refusal-reasons';

describe('refusal', () => {
  it.each(SHOT_REASONS)('%s: one sentence of what is, one of what would help', (reason) => {
    const { ok, message, remedy } = refusal(reason);
    expect(ok).toBe(false);
    for (const words of [message, remedy]) expect(words).toMatch(/^[A-Z][^.]*\.$/);
  });

  it('has words of its own for each reason', () => {
    const messages = SHOT_REASONS.map((reason) => refusal(reason).message);
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
    expect(refusal(reason).remedy).toMatch(words);
  });
});

it('outOfRange carries the words it is given', () => {
  expect(outOfRange('kit', 'It is off.', 'Mend it.')).toEqual({
    ok: false,
    reason: 'out-of-range',
    message: 'It is off.',
    remedy: 'Mend it.',
    field: 'kit',
  });
});
