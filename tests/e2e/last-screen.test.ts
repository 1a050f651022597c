import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { type OpenApp, openApp, untilFetched } from '../harness/open-app';
import { untilAssessed } from '../harness/read-room';
import { openTile, tapButton } from '../harness/thumb';
import { untilKept } from '../harness/until-kept';

let app: OpenApp;
beforeEach(async () => {
  app = await openApp();
  await untilRested();
});
afterEach(async () => {
  await app.close();
});

const noted = () => app.page.evaluate(() => localStorage.getItem('leeway.screen') ?? '');
const isNoted = async () => (await noted()).includes('\n');

/** Waits until the first visit has saved all that it saves by itself. */
async function untilRested(): Promise<void> {
  await untilAssessed(app.page);
  await untilFetched(app.page);
  await untilKept(app.page, 'desk', { recentShots: [expect.anything()] });
  // The last to be told, to ears, once all has stood still.
  const spoken = () => app.page.locator('.answer > output').textContent();
  await expect.poll(spoken).toMatch(/; sure to/);
}

/** Leaves the page, as an app is left that is put away, and comes back to it with the app's script held back. */
async function startHeld(page: Page = app.page) {
  let go = () => {};
  const isAsked = new Promise<void>((resolve) => {
    go = resolve;
  });
  await page.route(/\/first-/, async (route) => {
    await isAsked;
    await route.fallback();
  });
  await page.reload({ waitUntil: 'commit' });
  await page.waitForFunction(() => document.readyState !== 'loading');
  return {
    async takeOver() {
      go();
      await page.waitForFunction(() => document.title !== 'Leeway');
      expect(app.guard.problems).toEqual([]);
    },
  };
}

const screen = (page: Page = app.page) =>
  page.evaluate(() => document.querySelector('#app')?.innerHTML ?? '');

it('has the answer before the app’s own script has come, its drawings at their size from the first', async () => {
  const { page } = app;
  const answer = await page.locator('.answer-lead').textContent();
  await page.addInitScript(() => {
    const look = () => {
      const lead = document.querySelector('.answer-lead');
      if (!lead) {
        requestAnimationFrame(look);
        return;
      }
      const drawings = [...document.querySelectorAll('.shooter-diagram, .overhead-drawing')];
      const html = document.documentElement;
      html.dataset.firstSizes = drawings
        .map((one) => `${one.querySelector('svg')?.clientWidth} of ${one.clientWidth}`)
        .join(', ');
      html.dataset.firstAnswer = lead.textContent ?? '';
    };
    requestAnimationFrame(look);
  });
  const { takeOver } = await startHeld();
  const first = () => page.evaluate(() => ({ ...document.documentElement.dataset }));
  await expect.poll(first).toMatchObject({ firstAnswer: answer });
  expect((await first()).firstSizes).toMatch(/^(\d+) of \1, (\d+) of \2$/);
  expect(answer).not.toBe('');
  await takeOver();
});

it('is taken over node by node, and says what the app says', async () => {
  const { page } = app;
  const { takeOver } = await startHeld();
  await page.locator('.answer-lead').waitFor();
  const nodes = await page.evaluateHandle(() => [...document.querySelectorAll('#app *')]);
  const shown = await page.evaluateHandle(() => {
    const holder = document.querySelector('#app');
    const before = holder?.cloneNode(true);
    // As it stands once the app has drawn, before anything more has come.
    return {
      before,
      after: new Promise<Node | undefined>((resolve) => {
        new MutationObserver((_, observer) => {
          observer.disconnect();
          resolve(holder?.cloneNode(true));
        }).observe(document.querySelector('#app') as Element, { subtree: true, attributes: true });
      }),
    };
  });
  await takeOver();
  const isSame = await shown.evaluate(async ({ before, after }) => {
    const drawn = await after;
    // The mark that it is nobody's is taken off a moment later.
    for (const holder of [before, drawn]) (holder as HTMLElement).removeAttribute('data-noted');
    return before?.isEqualNode(drawn ?? null);
  });
  expect(isSame).toBe(true);
  const left = await nodes.evaluate((all) => [
    all.length,
    all.filter((one) => one.isConnected).length,
  ]);
  expect(left[0]).toBeGreaterThan(150);
  expect(left[1]).toBe(left[0]);
});

it('answers a tap that came before the app, once it has come', async () => {
  const { takeOver } = await startHeld();
  await app.page.locator('[data-opens="cut"]').tap();
  expect(await app.page.locator('#input-control').count()).toBe(0);
  await takeOver();
  await app.page.locator('#input-control').waitFor();
});

it('shows nothing of before a change from before the change is written', async () => {
  const { page, context } = app;
  await page.reload();
  await untilAssessed(page);
  expect(await isNoted()).toBe(true);
  // Whether a screen was noted as a row is handed to the database.
  await page.evaluate(() => {
    const { put } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.put = function (...given) {
      document.documentElement.dataset.notedAtPut = `${localStorage.getItem('leeway.screen')}`;
      return put.apply(this, given);
    };
  });
  await openTile(page, 'cut');
  await tapButton(page, 'Thinner');
  const atPut = () => page.evaluate(() => document.documentElement.dataset.notedAtPut ?? '');
  await expect.poll(atPut).toMatch(/^~/);
  // Here the page is killed: what starts then is another, which is told nothing by it.
  const second = await context.newPage();
  await second.route(/\/first-/, () => new Promise(() => {}));
  await second.goto(app.server.url, { waitUntil: 'commit' });
  await second.waitForFunction(() => document.readyState !== 'loading');
  expect(await screen(second)).toBe('');
  await second.close();
});

it('shows another tab’s change, and never what this tab showed before', async () => {
  const { page, context, server } = app;
  const second = await context.newPage();
  await second.goto(server.url);
  await untilAssessed(second);
  await openTile(second, 'cut');
  await tapButton(second, 'Thinner');
  await expect.poll(isNoted).toBe(false);
  expect(await noted()).toMatch(/^~/);
  // This tab knows of it by word of mouth alone, and leaves the note to who has written.
  await page.reload();
  await untilAssessed(page);
  expect(await isNoted()).toBe(false);
  await second.close();
});

it.each([
  ['turned', { width: 844, height: 390 }],
  ['of another size', { width: 412, height: 844 }],
])('shows nothing on a screen %s', async (_, size) => {
  const { page } = app;
  await page.reload();
  await untilAssessed(page);
  await page.setViewportSize(size);
  // A reload alone would note the screen as it stands now.
  const note = await noted();
  expect(note).toContain('\n');
  await page.addInitScript((text) => localStorage.setItem('leeway.screen', text), note);
  const { takeOver } = await startHeld();
  await page.waitForLoadState('domcontentloaded');
  expect(await screen()).toBe('');
  await takeOver();
});

it.each([
  ['damaged', (text: string) => text.replace('shot-place', 'shot-plaice')],
  [
    'a script',
    () => '00000000\n{"theme":"dark","hand":"right","tree":["script",{},["isOverrun=1"]]}',
  ],
  ['half of it', (text: string) => text.slice(0, text.length / 2)],
  ['no text of ours', () => 'hello'],
])('starts as ever where the note is %s', async (_, spoil) => {
  const { page } = app;
  await page.reload();
  await untilAssessed(page);
  const spoilt = spoil(await noted());
  await page.addInitScript((text) => localStorage.setItem('leeway.screen', text), spoilt);
  const { takeOver } = await startHeld();
  expect(await screen()).toBe('');
  await takeOver();
  expect(await page.locator('.answer-lead').textContent()).not.toBe('');
});

it('wears the theme chosen with its first frame', async () => {
  const { page } = app;
  await page.goto(`${app.server.url}#kit/preferences`);
  await page.getByRole('group', { name: 'Screen' }).getByText('light').tap();
  await expect
    .poll(() => page.evaluate(() => document.documentElement.dataset.theme))
    .toBe('light');
  await page.goto(`${app.server.url}#shot`);
  await untilKept(page, 'desk', { preferences: expect.objectContaining({ theme: 'light' }) });
  await untilAssessed(page);
  const { takeOver } = await startHeld();
  await page.locator('.answer-lead').waitFor();
  expect(await page.evaluate(() => document.documentElement.dataset.theme)).toBe('light');
  await takeOver();
});

it('gives way to the way to repair an app that does not start', async () => {
  const { page } = app;
  await page.route(/\/first-/, (route) => route.abort());
  await page.reload({ waitUntil: 'commit' });
  await page.locator('.answer-lead').waitFor();
  await page.locator('#rescue:not([hidden])').waitFor({ state: 'attached' });
  const rescue = page.getByRole('button', { name: 'Repair the app' });
  expect(await rescue.isVisible()).toBe(false);
  await page.evaluate(() => document.querySelector('#rescue')?.getAnimations()[0]?.finish());
  await rescue.waitFor();
  expect(await screen()).toBe('');
});
