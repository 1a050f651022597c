import { expect, it } from 'vitest';
import { refusal } from '../../../src/engine/aim/refusal';
import { remedyWords } from '../../../src/ui/shot/refusal-words';

it('speaks of another speed only where one was found', () => {
  const short = refusal('stops-short');
  expect(remedyWords(short, 1.2)).toBe(short.remedy);
  expect(remedyWords(short, null)).toMatch(/^No speed gets it there/);
  const thin = refusal('too-thin');
  expect(remedyWords(thin, null)).toBe(thin.remedy);
});
