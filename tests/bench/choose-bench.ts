import type { Page } from 'playwright-core';
import { openApp } from '../harness/open-app';
import { median } from '../harness/quantile';
import { tapButton } from '../harness/thumb';
import type { BenchLine } from './bench-line';

const ROUNDS = 5;

declare global {
  interface Window {
    tappedMs: number;
    seenMs: number;
  }
}

/** From a tap to the frame after something that it makes appear, in the page's own time, ms. */
async function tapUntil(page: Page, button: string, appears: string): Promise<number> {
  await page.evaluate((selector) => {
    window.seenMs = 0;
    addEventListener(
      'click',
      ({ timeStamp }) => {
        window.tappedMs = timeStamp;
      },
      { capture: true, once: true },
    );
    new MutationObserver((_, observer) => {
      if (document.querySelector(selector) === null) return;
      observer.disconnect();
      requestAnimationFrame(() => {
        window.seenMs = performance.now();
      });
    }).observe(document.body, { childList: true, subtree: true });
  }, appears);
  await tapButton(page, button);
  await page.waitForFunction(() => window.seenMs > 0, undefined, { polling: 50, timeout: 60_000 });
  return page.evaluate(() => window.seenMs - window.tappedMs);
}

/** How long a player waits for a comparison: each time of a page just opened. */
export async function chooseBench(): Promise<readonly BenchLine[]> {
  const firsts: number[] = [];
  const wholes: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const app = await openApp({ hash: '#choose' });
    try {
      const startMs = performance.now();
      firsts.push(await tapUntil(app.page, 'Ways', '.chance-map'));
      await app.page.locator('.compare progress').waitFor({ state: 'detached' });
      wholes.push((performance.now() - startMs) / 1000);
    } finally {
      await app.close();
    }
  }
  return [
    {
      name: 'first picture of a comparison after the tap, median',
      value: median(firsts),
      unit: 'ms',
    },
    { name: 'the whole comparison, median', value: median(wholes), unit: 's' },
  ];
}
