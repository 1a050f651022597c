import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { type OpenApp, openApp, untilRendered } from '../harness/open-app';
import { untilAssessed } from '../harness/read-room';
import { tapButton } from '../harness/thumb';

declare global {
  interface Window {
    /** How many more workers are taken away, without a word, just after they got a job. */
    toLose: number;
    /** How many were. */
    lost: number;
  }
}

const LONG_MS = 100_000;

let app: OpenApp;
beforeEach(async () => {
  app = await openApp();
  await app.page.clock.install();
  await app.page.addInitScript(() => {
    window.toLose = 0;
    window.lost = 0;
    window.Worker = class extends Worker {
      override postMessage(message: unknown): void {
        super.postMessage(message);
        if (window.toLose === 0) return;
        window.toLose--;
        window.lost++;
        this.terminate();
      }
    };
  });
  await app.page.reload();
  await untilRendered(app.page);
  await untilAssessed(app.page);
});
afterEach(async () => {
  expect(app.guard.problems).toEqual([]);
  await app.close();
});

/** From now on so many workers are lost. */
const lose = (page: Page, count: number) =>
  page.evaluate((workers) => {
    window.toLose = workers;
    window.lost = 0;
  }, count);

/** Lets the page's own clock run until so many were lost, and the last of them was missed. */
async function untilMissed(page: Page, count: number): Promise<void> {
  for (let lost = 1; lost <= count; lost++) {
    await page.waitForFunction((workers) => window.lost >= workers, lost);
    await page.clock.runFor(36_000 * 2 ** (lost - 1));
  }
}

/** Asks for another room for error. */
async function playItFirm(page: Page): Promise<void> {
  await tapButton(page, /^Speed/);
  await tapButton(page, 'firm');
}

it('works the room for error out though a worker died in silence over it', async () => {
  const { page } = app;
  await lose(page, 1);
  await playItFirm(page);
  await untilMissed(page, 1);
  await untilAssessed(page);
  expect(await page.evaluate(() => window.lost)).toBe(1);
});

it('says where the third worker died too, and works it out when told to', async () => {
  const { page } = app;
  await lose(page, 3);
  await playItFirm(page);
  await untilMissed(page, 3);
  await page.locator('.answer-meaning', { hasText: 'not worked out' }).waitFor();
  await tapButton(page, 'Close');
  await tapButton(page, /Why$/);
  await page.locator('.why-problem').waitFor();
  await tapButton(page, 'Try again');
  await untilAssessed(page);
  expect(await page.locator('.why-problem').count()).toBe(0);
});

it('compares all ways though a worker died in silence over some', async () => {
  const { page } = app;
  await lose(page, 1);
  await page.evaluate(() => {
    location.hash = '#choose/ways';
  });
  await untilMissed(page, 1);
  await page.locator('.way-row').first().waitFor({ timeout: LONG_MS });
  await page.locator('.compare progress').waitFor({ state: 'detached', timeout: LONG_MS });
  expect(await page.evaluate(() => window.lost)).toBe(1);
});
