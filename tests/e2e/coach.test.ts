import { afterEach, describe, expect, it } from 'vitest';
import { runAxe } from '../harness/axe';
import { faultsAtAllSizes } from '../harness/layout-faults';
import { type OpenApp, openApp } from '../harness/open-app';
import { settle } from '../harness/read-shot';
import { THEMES } from '../harness/screens';
import { tapButton } from '../harness/thumb';

let app: OpenApp;
afterEach(async () => {
  expect(app.guard.problems).toEqual([]);
  await app.close();
});

const told = () => app.page.locator('.coach output');

describe('the coach’s view', () => {
  it('steps the input touched last, by arrow keys and at the edges, lit, until Escape', async () => {
    app = await openApp({ hasWorkers: false, hash: '#shot/speed' });
    const { page } = app;
    await page.evaluate(() => {
      const request = async () => {
        document.body.dataset.lit = 'yes';
        return { release: async () => (document.body.dataset.lit = 'no'), addEventListener() {} };
      };
      Object.defineProperty(navigator, 'wakeLock', { value: { request } });
    });
    await page.locator('#input-control').waitFor();
    await page.goto(`${app.server.url}#shot/why`);
    await page.getByRole('button', { name: 'Coach’s view' }).tap();
    await expect.poll(() => told().textContent()).toBe('Speed 1.8 m/s');
    await expect.poll(() => page.evaluate(() => document.body.dataset.lit)).toBe('yes');
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => told().textContent()).toBe('Speed 1.9 m/s');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await expect.poll(() => told().textContent()).toBe('Speed 1.7 m/s');
    await tapButton(page, 'More: Speed');
    await expect.poll(() => told().textContent()).toBe('Speed 1.8 m/s');
    const seen = page.locator('.nav-bar, .kit-strip, .shot-actions, .input-tiles');
    expect(await seen.filter({ visible: true }).count()).toBe(0);
    await page.keyboard.press('Escape');
    await page.locator('.nav-bar').waitFor();
    expect(await page.evaluate(() => document.body.dataset.lit)).toBe('no');
    expect(await page.evaluate(() => 'coach' in document.documentElement.dataset)).toBe(false);
  });

  it.each(THEMES)('has nothing for axe in the %s theme, and fits at all sizes', async (theme) => {
    app = await openApp({ hasWorkers: false, hash: '#shot/coach' });
    const { page } = app;
    await told().waitFor();
    await page.evaluate((name) => {
      document.documentElement.dataset.theme = name;
    }, theme);
    await settle(page);
    expect((await runAxe(page)).found).toEqual([]);
    expect(await faultsAtAllSizes(page)).toEqual([]);
  });
});
