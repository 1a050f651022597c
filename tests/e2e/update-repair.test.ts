import { rm } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildAnew } from '../harness/build-anew';
import { deriveVersion } from '../harness/derive-version';
import { outOfSight } from '../harness/layout-faults';
import {
  type OpenApp,
  openApp,
  untilFetched,
  untilOfflineReady,
  untilRendered,
} from '../harness/open-app';
import { PATIENCE_MS } from '../harness/patience';
import { putRawRows, readRawDatabase } from '../harness/raw-database';
import { tapButton } from '../harness/thumb';
import {
  countLoads,
  lookForUpdate,
  openTab,
  untilNoWorkerComes,
  updateButton,
  versionOf,
} from '../harness/update-at-hand';
import { CURVE_ATTEMPT } from '../store/invented-attempts';

/** A browser takes some seconds to ask for a worker's script again. */
const PATIENT = { timeout: PATIENCE_MS };

let app: OpenApp;
let folders: string[];
beforeEach(async () => {
  folders = [];
  app = await openApp({
    hasWorkers: false,
    isStored: true,
    basePath: '/some/where/',
    hash: '#kit/about',
  });
  await untilOfflineReady(app.page);
  await untilFetched(app.page);
  await putRawRows(app.page, 'attempts', [CURVE_ATTEMPT]);
});
afterEach(async () => {
  await app.close();
  for (const folder of folders) await rm(folder, { recursive: true, force: true });
});

async function derive(...how: Parameters<typeof deriveVersion>): Promise<string> {
  const folder = await deriveVersion(...how);
  folders.push(folder);
  return folder;
}

const storedFiles = (page: Page) =>
  page.evaluate(async () => {
    const names = await caches.keys();
    const files = await Promise.all(
      names.map(async (name) => (await (await caches.open(name)).keys()).map(({ url }) => url)),
    );
    return files.flat();
  });

/** Lets the time pass after which the page's way out is shown; gives that time, ms. */
const passRescueDelay = (page: Page) =>
  page.evaluate(() => {
    const [appearing] = document.querySelector('#rescue')?.getAnimations() ?? [];
    appearing?.finish();
    return appearing?.effect?.getComputedTiming().delay;
  });

/** Notes, beyond the load that follows, that the page says it is at work: it may for a moment only. */
const noteFetching = (page: Page) =>
  page.evaluate(() => {
    const all = { subtree: true, childList: true, characterData: true };
    new MutationObserver(() => {
      if (document.body.textContent?.includes('Fetching…'))
        sessionStorage.setItem('fetching', 'seen');
    }).observe(document.body, all);
  });

const keepsReading = async (page: Page) =>
  expect((await readRawDatabase(page)).stores.attempts).toEqual([CURVE_ATTEMPT]);

describe('a stored app with a file ruined', () => {
  beforeEach(async () => {
    await app.page.evaluate(async () => {
      const [name = ''] = await caches.keys();
      const store = await caches.open(name);
      const style = (await store.keys()).find(({ url }) => url.includes('.css'));
      if (style) await store.put(style, new Response('ruined'));
    });
  });
  const isRuined = (page: Page) =>
    page.evaluate(async () => {
      const [style] = [...document.styleSheets].filter(({ href }) => href !== null);
      return style?.cssRules.length === 0;
    });

  it('is repaired from within, in every tab, and works without the server again', async () => {
    const { page } = app;
    await page.reload();
    await untilRendered(page);
    expect(await isRuined(page)).toBe(true);
    const second = await openTab(app.context, `${app.server.url}#kit/cues`);
    const before = await readRawDatabase(page);
    const counts = [page, second].map(countLoads);
    const told = page.getByText(
      /^✓ The app is fresh \(\d+\.\d+\.\d+, .+\); all you keep is here\.$/,
    );
    expect(await told.count()).toBe(0);
    await noteFetching(page);
    await page.getByRole('button', { name: 'Repair the app' }).click();
    for (const tab of [page, second]) {
      await expect.poll(() => isRuined(tab).catch(() => true), PATIENT).toBe(false);
    }
    await told.waitFor();
    expect(await page.evaluate(() => sessionStorage.getItem('fetching'))).toBe('seen');
    expect(await outOfSight(page, ['.about-text [role="status"]'])).toEqual([]);
    await untilOfflineReady(page);
    await untilNoWorkerComes(page);
    expect(counts.map(({ loads }) => loads)).toEqual([1, 1]);
    expect(await readRawDatabase(page)).toEqual(before);

    await app.server.stop();
    app.guard.expectServerGone();
    await page.reload();
    await untilRendered(page);
    expect(await isRuined(page)).toBe(false);
    expect(await told.count()).toBe(0);
    expect(app.guard.problems).toEqual([]);
  });

  it('is left as it is when there is no server to fetch it from', async () => {
    const { page } = app;
    const before = await storedFiles(page);
    await app.server.stop();
    app.guard.expectServerGone();
    await tapButton(page, 'Repair the app');
    await page.getByText('The server cannot be reached').waitFor();
    expect(await storedFiles(page)).toEqual(before);
    await page.reload();
    await untilRendered(page);
    await keepsReading(page);
    expect(app.guard.problems).toEqual([]);
  });
});

it('a version that does not start offers its own repair, and what is kept outlives it', async () => {
  const { page } = app;
  const rescue = page.getByRole('button', { name: 'Repair the app' });
  app.server.deploy(await derive('broken', () => "throw new Error('does not start')"));
  await lookForUpdate(page);
  await updateButton(page).click();
  await page.waitForFunction(() => document.querySelector('#app')?.childElementCount === 0);
  await page.locator('#rescue:not([hidden])').waitFor({ state: 'attached' });
  expect(await rescue.isVisible()).toBe(false);
  expect(await passRescueDelay(page)).toBe(8000);
  await rescue.waitFor();
  const broken = await versionOf(page);

  // Half a release is no cure: a script that its worker asks for is not there.
  const half = await derive('half');
  await rm(`${half}/assets/first-half----.js`);
  app.server.deploy(half);
  await rescue.click();
  await page.getByText('has no whole app to give').waitFor();
  expect(await versionOf(page)).toBe(broken);

  app.server.deploy(await derive('good'));
  await rescue.click();
  await page.locator('html[data-version="good"]').waitFor();
  await untilRendered(page);
  expect(await page.locator('#rescue').isVisible()).toBe(false);
  await untilOfflineReady(page);
  await keepsReading(page);
});

it('a self-destroying build takes the stored app off, and leaves what is kept', async () => {
  const { page } = app;
  await untilFetched(page);
  const destroying = await buildAnew({ LEEWAY_SELF_DESTROYING: '1' });
  folders.push(destroying);
  app.server.deploy(destroying);
  await lookForUpdate(page).catch(() => undefined);
  await expect.poll(() => storedFiles(page).catch(() => ['loading']), PATIENT).toEqual([]);
  // The worker that goes loads the page anew; one that it misses is rid of it by its next load.
  await page.reload().catch(() => undefined);
  await untilNoWorkerComes(page);
  const counted = countLoads(page);
  await page.reload();
  await untilRendered(page);
  await untilNoWorkerComes(page);
  expect(counted.loads).toBe(1);
  const registrations = () =>
    page.evaluate(async () => (await navigator.serviceWorker.getRegistrations()).length);
  expect(await registrations()).toBe(0);
  await keepsReading(page);
  await untilFetched(page);

  app.server.deploy('dist');
  await page.reload();
  await untilOfflineReady(page);
  await keepsReading(page);
  expect(app.guard.problems).toEqual([]);
});
