import { expect, it } from 'vitest';
import { DEFAULT_SHOT } from '../../../src/store/default-desk';
import { uncorrectedWords } from '../../../src/ui/shot/meaning-words';
import { answerTo } from '../state/open-shot';

const DEG = Math.PI / 180;

/** A stroke that sends the object ball so far right of a target line at 20°. */
function sent(offDeg: number | null) {
  const answer = answerTo(DEFAULT_SHOT);
  const directionRad = offDeg === null ? null : (20 + offDeg) * DEG;
  return { ...answer, objectBall: { ...answer.objectBall, directionRad } };
}

it.each([
  [-24, 'sends the object ball 24.0° too far left'],
  [2.1, 'sends the object ball 2.1° too far right'],
  [0.8, 'still goes, the object ball 0.8° right'],
  [0.02, 'would go the same way'],
  [null, 'would leave the object ball where it is'],
])('a ball sent %s° beside the target %s', (offDeg, words) => {
  expect(uncorrectedWords(sent(offDeg), 20 * DEG, 1 * DEG)).toBe(words);
});

it('says of a stroke that passes the ball that it would miss it', () => {
  expect(uncorrectedWords({ ok: false, reason: 'misses' }, 0, null)).toBe(
    'would miss the object ball',
  );
});
