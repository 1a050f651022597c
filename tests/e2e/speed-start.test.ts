import { expect, it } from 'vitest';
import { coldStarts, overBare } from '../bench/cold-start';

/**
 * About four times is reached: the answer and its drawings are worked out and laid out from scratch,
 * and what is kept is read before. The rest is the machine's noise.
 */
const MOST = 6;

it('shows the last answer, offline and cold, for a few times the work of a bare page', async () => {
  const { threadMs } = overBare(await coldStarts(3));
  expect(threadMs.ratio).toBeGreaterThan(1);
  expect(threadMs.ratio).toBeLessThan(MOST);
});
