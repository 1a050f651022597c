import { expect, it } from 'vitest';
import { refusal } from '../../../src/engine/direct/refusal';
import { refusalWords, remedyWords } from '../../../src/words/refusal-words';

it('speaks of another speed only where one was found', () => {
  const short = refusal('stops-short');
  expect(remedyWords(short, 1.2)).toBe(refusalWords(short).remedy);
  expect(remedyWords(short, null)).toMatch(/^No speed gets it there/);
  const thin = refusal('too-thin');
  expect(remedyWords(thin, null)).toBe(refusalWords(thin).remedy);
});
