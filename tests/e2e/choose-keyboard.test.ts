import { afterEach, beforeEach, expect, it } from 'vitest';
import { type OpenApp, openApp } from '../harness/open-app';
import { PATIENCE_MS } from '../harness/patience';

let app: OpenApp;
beforeEach(async () => {
  app = await openApp({ hash: '#choose' });
});
afterEach(() => app.close());

const status = async () => (await app.page.locator('.status-line p').textContent()) ?? '';

/** The accessible name of what has the focus, or its text. */
const focused = () =>
  app.page.evaluate(() => {
    const element = document.activeElement;
    return element?.getAttribute('aria-label') ?? element?.textContent ?? 'nothing';
  });

/** Presses Tab until the focus is on something of that name, and Enter there. */
async function enter(name: RegExp): Promise<void> {
  for (let i = 0; i < 80; i++) {
    if (name.test(await focused())) return app.page.keyboard.press('Enter');
    await app.page.keyboard.press('Tab');
  }
  throw new Error(`Tab never came to ${name}`);
}

it('lays, moves and plays balls without a finger', async () => {
  const { page } = app;
  // On an upright phone the table lies on its side, the break end on the left.
  await enter(/^Positions/);
  await enter(/^New position$/);
  await enter(/^cue ball$/);
  await enter(/^Put down$/);
  for (let i = 0; i < 20; i++) await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('Shift+ArrowDown');
  await enter(/^8 ball$/);
  await enter(/^Put down$/);
  for (let i = 0; i < 20; i++) await page.keyboard.press('ArrowRight');
  // Twenty centimetres of a nine-foot table's diamonds, 31.75 cm each, above its middle.
  await expect.poll(status).toBe('8 ball: 4.6 diamonds along, 2.0 from the left.');
  await enter(/^Play$/);
  await enter(/^8 ball$/);
  await enter(/^Into the far left pocket/);
  await expect.poll(status).toMatch(/^The 8 into the far left pocket: cut \d+° ← left/);
});

it('compares, looks at a way, and comes back to its row', async () => {
  const { page } = app;
  await enter(/^Ways$/);
  await page.locator('.way-row').first().waitFor();
  await page.waitForFunction(() => document.querySelector('progress') === null, null, {
    timeout: PATIENCE_MS,
  });
  const row = (await page.locator('.way-row').first().textContent()) ?? '';
  await page.locator('.way-row').first().focus();
  await page.keyboard.press('Enter');
  await expect.poll(focused).toMatch(/^for most (easy|fair|hard) /);
  await enter(/All ways$/);
  await expect.poll(focused).toBe(row);
});
