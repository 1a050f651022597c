import type { Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { writeLink } from '../../src/store/links/link-text';
import { LINK_OF_VERSION_1, SAID_IN_VERSION_1 } from '../fixtures/link-of-version-1';
import { runAxe } from '../harness/axe';
import { faultsAtAllSizes } from '../harness/layout-faults';
import { type OpenApp, openApp, untilOfflineReady, untilRendered } from '../harness/open-app';
import { readRawDatabase } from '../harness/raw-database';
import { settle } from '../harness/read-shot';
import { THEMES } from '../harness/screens';
import { tapButton } from '../harness/thumb';
import { sealedLink } from '../store/links/sealed-link';

const AT_LINK = `#kit/link/${LINK_OF_VERSION_1}`;
const CUE_ONLY = writeLink({
  kit: SAID_IN_VERSION_1.kit.cues ? { cues: SAID_IN_VERSION_1.kit.cues } : {},
});

let app: OpenApp;
const open = async (options: Parameters<typeof openApp>[0]) => {
  app = await openApp({ hasWorkers: false, ...options });
};
afterEach(async () => {
  expect(app.guard.problems).toEqual([]);
  await app.close();
});

const brings = (page: Page) => page.getByRole('heading', { name: 'This link brings' });
const kept = (page: Page) => page.locator('.undo-delete', { hasText: 'is on Shot' });
/** The names of all that is kept. */
async function namesKept(page: Page): Promise<string> {
  const { stores } = await readRawDatabase(page);
  return JSON.stringify(stores);
}

describe('a link that the browser opens', () => {
  it('says what it brings, keeps nothing unasked, and asks no more once it was looked at', async () => {
    await open({ hash: AT_LINK });
    const { page, server } = app;
    await brings(page).waitFor();
    expect(page.url()).toBe(`${server.url}#kit/link`);
    expect(await page.locator('.link-part').allTextContents()).toEqual([
      expect.stringContaining('Cut 32° → right, 0.84 m'),
      expect.stringContaining('Past the eight'),
      expect.stringContaining('Lent cue'),
    ]);
    expect(await page.locator('.link-part').first().textContent()).toContain('Raised cue');
    expect(await namesKept(page)).not.toMatch(/Past the eight|Lent cue/);
    await page.reload();
    await untilRendered(page);
    await page.getByRole('heading', { name: 'Paste a link' }).waitFor();
    expect(await brings(page).count()).toBe(0);
    await page.goBack();
    expect(page.url()).not.toContain(LINK_OF_VERSION_1);
  });

  it('is kept once that is asked for, and one Undo gives all of it back', async () => {
    await open({ hash: AT_LINK });
    const { page } = app;
    await brings(page).waitFor();
    await page.locator('.link-part', { hasText: 'Lent cue' }).tap();
    await tapButton(page, 'Keep it');
    await kept(page).waitFor();
    await expect.poll(() => namesKept(page)).toMatch(/Past the eight.*Lent cue|Lent cue.*Past the/);
    await tapButton(page, 'Go to Shot');
    await expect.poll(() => page.locator('.shot-place').textContent()).toContain('2.4');
    await page.goBack();
    await tapButton(page, /Undo$/);
    await expect.poll(() => namesKept(page)).not.toMatch(/"Lent cue"|"Past the eight"/);
  });

  it('opens without a network, with the stored app, and in a second tab', async () => {
    await open({ isStored: true });
    const { page, server, context, guard } = app;
    await untilOfflineReady(page);
    await server.stop();
    guard.expectServerGone();
    const tab = await context.newPage();
    await tab.goto(server.url + AT_LINK);
    await brings(tab).waitFor();
    await tapButton(tab, 'Keep it');
    await kept(tab).waitFor();
  });
});

describe('without a finger', () => {
  beforeEach(() => open({ hash: '#kit/link' }));
  const focused = () => app.page.evaluate(() => document.activeElement?.textContent ?? '');
  async function tabTo(name: RegExp): Promise<void> {
    for (let i = 0; i < 40; i++) {
      if (name.test(await focused())) return;
      await app.page.keyboard.press('Tab');
    }
    throw new Error(`Tab never came to ${name}`);
  }

  it('is pasted, read, marked, kept and given back', async () => {
    const { page } = app;
    await page.getByRole('textbox', { name: 'Paste a link' }).focus();
    await page.keyboard.insertText(`Look: https://example.org/leeway/${AT_LINK}`);
    await tabTo(/^Look at it$/);
    await page.keyboard.press('Enter');
    await expect.poll(focused).toBe('This link brings');
    await tabTo(/^The kit/);
    await page.keyboard.press('Space');
    await tabTo(/^Keep it$/);
    await page.keyboard.press('Enter');
    await kept(page).waitFor();
    await expect.poll(focused).toBe('Links');
    await tabTo(/Undo$/);
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('.undo-delete').textContent()).toBe('');
    await expect.poll(() => namesKept(page)).not.toContain('"Lent cue"');
  });
});

describe.each(THEMES)('in the %s theme', (theme) => {
  it('axe finds nothing beside a refusal and what was kept, and all of it fits', async () => {
    await open({ hash: `#kit/link/${sealedLink([2, 1, 2, 3])}` });
    const { page } = app;
    const look = async () => {
      await page.evaluate((name) => {
        document.documentElement.dataset.theme = name;
      }, theme);
      await settle(page);
      expect((await runAxe(page)).found).toEqual([]);
    };
    await page.getByText('made by a newer Leeway').waitFor();
    await look();
    await page.getByRole('textbox', { name: 'Paste a link' }).fill(CUE_ONLY);
    await tapButton(page, 'Look at it');
    await brings(page).waitFor();
    await look();
    await tapButton(page, 'Keep it');
    await page.getByText('The kit is kept beside yours').waitFor();
    await look();
    expect(await faultsAtAllSizes(page)).toEqual([]);
  });
});

it('is shared from where it is looked at, and Back leads there', async () => {
  await open({ hash: '#shot/why' });
  const { page } = app;
  await tapButton(page, 'Share');
  await page.getByRole('img', { name: /QR code/ }).waitFor();
  const link = page.getByRole('textbox', { name: 'As a link' });
  const shot = await link.inputValue();
  await tapButton(page, 'With the kit in play');
  expect((await link.inputValue()).length).toBeGreaterThan(shot.length + 80);
  await tapButton(page, /Back$/);
  await page.getByRole('heading', { name: 'Why this aim' }).waitFor();
  await page.goto(`${app.server.url}#choose/positions`);
  await page.getByRole('button', { name: 'More: Long thin cut', exact: true }).tap();
  await tapButton(page, 'Share Long thin cut');
  await page.locator('.link-part', { hasText: 'Long thin cut' }).waitFor();
  await page.goto(`${app.server.url}#kit/cues`);
  await page.getByRole('button', { name: 'More: Stiff cue' }).tap();
  await tapButton(page, 'Share Stiff cue');
  await page.locator('.link-part', { hasText: 'Stiff cue' }).waitFor();
});
