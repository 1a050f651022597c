import type { Locator, Page } from 'playwright-core';
import { settle } from './read-shot';

/** One finger on the screen, moved as the hardware would; it can be taken away as a phone does. */
export interface Finger {
  /** Down, a share of the target's width and height from its corner. */
  down(target: Locator, acrossShare?: number, downShare?: number): Promise<void>;
  /** On by so much, in steps of a few pixels. */
  move(rightPx: number, downPx: number): Promise<void>;
  up(): Promise<void>;
  takenAway(): Promise<void>;
}

const STEPS = 6;

/** @param pass lets what the page draws next be drawn */
export async function createFinger(
  page: Page,
  pass: () => Promise<void> = () => settle(page),
): Promise<Finger> {
  const devtools = await page.context().newCDPSession(page);
  let at = { x: 0, y: 0 };
  const send = (
    type: 'touchStart' | 'touchMove' | 'touchEnd' | 'touchCancel',
    touchPoints: { x: number; y: number }[] = [],
    timestamp = Date.now() / 1000,
  ) => devtools.send('Input.dispatchTouchEvent', { type, touchPoints, timestamp });
  return {
    async down(target, acrossShare = 0.5, downShare = 0.5) {
      await target.scrollIntoViewIfNeeded();
      const box = await target.boundingBox();
      if (!box) throw new Error(`${target} is not on the page`);
      at = { x: box.x + box.width * acrossShare, y: box.y + box.height * downShare };
      await send('touchStart', [at]);
    },
    async move(rightPx, downPx) {
      if (rightPx === 0 && downPx === 0) return;
      const from = at;
      for (let step = 1; step <= STEPS; step++) {
        at = { x: from.x + (rightPx * step) / STEPS, y: from.y + (downPx * step) / STEPS };
        await send('touchMove', [at]);
      }
      // A drag moves what it holds at most once a frame.
      await pass();
    },
    async up() {
      // At rest, or a browser takes it for a fling and the next tap for the end of that.
      const restedS = Date.now() / 1000 + 0.1;
      await send('touchMove', [at], restedS);
      await send('touchEnd', [], restedS);
    },
    async takenAway() {
      await send('touchCancel');
      await pass();
    },
  };
}
