import type { CDPSession, Page } from 'playwright-core';

const RATES = [1, 4, 6, 8, 10, 12, 14];

/** Milliseconds a fixed loop takes in the page: the best of three. */
function busyMs(page: Page): Promise<number> {
  return page.evaluate(() => {
    let best = Number.POSITIVE_INFINITY;
    for (let round = 0; round < 3; round++) {
      const start = performance.now();
      let sum = 0;
      for (let step = 0; step < 6e6; step++) sum += Math.sqrt(step);
      if (sum > 0) best = Math.min(best, performance.now() - start);
    }
    return best;
  });
}

/**
 * Slows the page's processor until a fixed loop takes at least `factor` times as long, for the
 * browser's own figure is not to be trusted.
 *
 * @returns the slowdown measured
 * @throws Error where the browser cannot be slowed that far
 */
export async function slowDown(page: Page, cdp: CDPSession, factor: number): Promise<number> {
  const free = await busyMs(page);
  for (const rate of RATES) {
    await cdp.send('Emulation.setCPUThrottlingRate', { rate });
    const measured = (await busyMs(page)) / free;
    if (measured >= factor) return measured;
  }
  throw new Error(`the browser could not be slowed down ${factor} times`);
}
