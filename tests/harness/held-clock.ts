import type { Page } from 'playwright-core';

/** A page's clock that stands still but for what a test lets pass. */
export interface HeldClock {
  /** Lets so many frames pass, sixty a second, and the timers that are due by then. */
  frames(count: number): Promise<void>;
  /** Lets the clock run on by itself again. */
  letGo(): Promise<void>;
}

const FRAME_MS = 16;
/** More than passes until a clock that was just taken over can be stopped, on any machine. */
const AHEAD_MS = 600_000;

/** Stops the clock of a page, its timers and its frames; what the browser itself does goes on. */
export async function holdClock(page: Page): Promise<HeldClock> {
  const nowMs = await page.evaluate(() => Date.now());
  await page.clock.install({ time: nowMs });
  await page.clock.pauseAt(nowMs + AHEAD_MS);
  return {
    frames: (count) => page.clock.runFor(count * FRAME_MS),
    letGo: () => page.clock.resume(),
  };
}
