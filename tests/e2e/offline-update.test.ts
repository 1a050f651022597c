import { cp, mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { deriveVersion } from '../harness/derive-version';
import {
  type OpenApp,
  openApp,
  untilFetched,
  untilOfflineReady,
  untilRendered,
} from '../harness/open-app';
import { PATIENCE_MS } from '../harness/patience';
import {
  lookForUpdate,
  takeUpdate,
  untilNoWorkerComes,
  updateButton,
} from '../harness/update-at-hand';

let next: string;
beforeAll(async () => {
  next = await deriveVersion('next');
});
afterAll(() => rm(next, { recursive: true, force: true }));

/** Where the addresses are harder to get right than at the root. */
const basePath = '/some/where/';

describe('an update of the app', () => {
  let app: OpenApp;
  let loads: Map<Page, number>;

  beforeEach(async () => {
    app = await openApp({ hasWorkers: false, isStored: true, basePath });
    loads = new Map([[app.page, 0]]);
    countLoads(app.page);
    await untilOfflineReady(app.page);
    await keepSomething(app.page);
  });
  afterEach(() => app.close());

  function countLoads(page: Page) {
    page.on('framenavigated', (frame) => {
      if (frame === page.mainFrame()) loads.set(page, (loads.get(page) ?? 0) + 1);
    });
  }

  async function openSecondTab(): Promise<Page> {
    const page = await app.context.newPage();
    await page.goto(app.server.url);
    await untilRendered(page);
    loads.set(page, 0);
    countLoads(page);
    return page;
  }

  it('is offered, changes nothing until taken, then loads every tab once and keeps the data', async () => {
    const second = await openSecondTab();
    app.server.deploy(next);
    await lookForUpdate(app.page);
    for (const page of [app.page, second]) {
      await updateButton(page).waitFor();
      expect(await versionOf(page)).toBe('this');
    }

    await untilFetched(app.page);
    await app.page.reload();
    await updateButton(app.page).waitFor();
    expect(await versionOf(app.page)).toBe('this');
    expect(loads.get(second)).toBe(0);
    loads.set(app.page, 0);

    await takeUpdate(app.page);
    for (const page of [app.page, second]) {
      await untilVersion(page, 'next');
      await untilRendered(page);
    }
    for (const page of [app.page, second]) await untilNoWorkerComes(page);
    expect([...loads.values()]).toEqual([1, 1]);
    for (const page of [app.page, second]) {
      expect(await updateButton(page).count()).toBe(0);
    }
    expect(await keptThing(app.page)).toBe('kept');
    expect(app.guard.problems).toEqual([]);
  });

  it('once taken, works without the server', async () => {
    app.server.deploy(next);
    await lookForUpdate(app.page);
    await takeUpdate(app.page);
    await untilVersion(app.page, 'next');
    await untilOfflineReady(app.page);
    await app.server.stop();
    app.guard.expectServerGone();
    await app.page.reload();
    await untilRendered(app.page);
    expect(await versionOf(app.page)).toBe('next');
  });
});

describe('an update whose download breaks off', () => {
  it('is offered when a later attempt succeeds, and harms nothing meanwhile', async () => {
    const broken = await mkdtemp(join(tmpdir(), 'leeway-broken-'));
    const app = await openApp({ hasWorkers: false, isStored: true });
    try {
      await untilOfflineReady(app.page);
      await cp(next, broken, { recursive: true });
      const scripts = await readdir(join(broken, 'assets'));
      for (const name of scripts) await rm(join(broken, 'assets', name));

      app.server.deploy(broken);
      for (let attempt = 0; attempt < 2; attempt += 1) {
        await lookForUpdate(app.page).catch(() => undefined);
        await untilNoWorkerComes(app.page);
      }
      expect(await updateButton(app.page).count()).toBe(0);
      await app.page.reload();
      await untilRendered(app.page);
      expect(await versionOf(app.page)).toBe('this');

      app.server.deploy(next);
      await lookForUpdate(app.page);
      await takeUpdate(app.page);
      await untilVersion(app.page, 'next');
    } finally {
      await app.close();
      await rm(broken, { recursive: true, force: true });
    }
  });
});

const versionOf = async (page: Page) =>
  (await page.evaluate(() => document.documentElement.dataset.version)) ?? 'this';

const untilVersion = (page: Page, version: 'next') =>
  expect.poll(() => versionOf(page).catch(() => 'loading'), { timeout: PATIENCE_MS }).toBe(version);

const keepSomething = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('kept-by-a-test', 1);
        opening.onupgradeneeded = () => opening.result.createObjectStore('things').put('kept', 1);
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          opening.result.close();
          resolve();
        };
      }),
  );

const keptThing = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<unknown>((resolve, reject) => {
        const opening = indexedDB.open('kept-by-a-test', 1);
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const reading = opening.result.transaction('things').objectStore('things').get(1);
          reading.onerror = () => reject(reading.error);
          reading.onsuccess = () => resolve(reading.result);
        };
      }),
  );
