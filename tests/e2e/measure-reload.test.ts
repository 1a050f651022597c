import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { beginTrial, playAttempt, untilFitted } from '../harness/measure-at-table';
import { type OpenApp, openApp, untilRendered } from '../harness/open-app';
import { tap } from '../harness/thumb';

declare global {
  interface Window {
    /** Every aim that stood on Shot, and was not grey, since the page was loaded. */
    firmAims: string[];
    /** Their headlines, which come a frame before the figures do. */
    firmLeads: string[];
  }
}

let app: OpenApp;
beforeEach(async () => {
  app = await openApp();
  await app.page.addInitScript(() => {
    window.firmAims = [];
    window.firmLeads = [];
    const note = () => {
      const fold = document.querySelector('.answer-figures:not(.is-stale) .answer-fold');
      // The figures, which tell it to the millimetre, come a frame later.
      const text = fold?.querySelector('.answer-others') && fold.textContent;
      if (text && text !== window.firmAims.at(-1)) window.firmAims.push(text);
      const lead = fold?.querySelector('.answer-lead')?.textContent;
      if (lead && lead !== window.firmLeads.at(-1)) window.firmLeads.push(lead);
    };
    const all = { subtree: true, childList: true, attributes: true, characterData: true };
    new MutationObserver(note).observe(document, all);
  });
});
afterEach(async () => {
  expect(app.guard.problems).toEqual([]);
  await app.close();
});

/** Takes a line down, read on another cue than the one assumed, and says where Shot then aims. */
async function measureLine(page: Page): Promise<string> {
  await tap(page, page.getByRole('button', { name: /Measure it/ }));
  await playAttempt(page, await beginTrial(page, 'Line'));
  await page.getByText('It counts.').waitFor();
  await tap(page, page.getByRole('link', { name: 'Shot' }));
  await page.locator('.answer-figures:not(.is-stale)').waitFor();
  return (await page.locator('.answer-fold').textContent()) ?? '';
}

/** Goes where it is said that the readings are worked out, and back. */
async function untilWorkedOut(page: Page): Promise<void> {
  await page.goto(`${app.server.url}#kit/measure`);
  await page.locator('.sureness-list').waitFor();
  await untilFitted(page);
  await page.goto(`${app.server.url}#shot`);
  await page.locator('.answer-figures').waitFor();
}

it('opens with the answer that its readings give, and keeps it', async () => {
  const { page } = app;
  const assumed = await page.locator('.answer-fold').textContent();
  const measured = await measureLine(page);
  expect(measured).not.toBe(assumed);
  await page.reload();
  await untilRendered(page);
  await untilWorkedOut(page);
  expect(await page.evaluate(() => window.firmAims)).toEqual([measured]);
  const leads = await page.evaluate(() => window.firmLeads);
  expect(leads).toHaveLength(1);
  expect(measured.startsWith(leads[0] ?? '?')).toBe(true);
});

it('greys what may still change, and says why, where nothing is known from before', async () => {
  const { page } = app;
  const measured = await measureLine(page);
  await page.evaluate(() => localStorage.removeItem('leeway.known'));
  await page.reload();
  await page.getByText('Working out what your readings tell. Before that:').waitFor();
  await page.locator('.answer-figures:not(.is-stale)').waitFor();
  expect(await page.evaluate(() => window.firmAims)).toEqual([measured]);
});
