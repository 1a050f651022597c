import { rm } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { WHOLE } from '../harness/campaign-size';
import { deriveAllNew } from '../harness/derive-version';
import { outOfSight } from '../harness/layout-faults';
import { type OpenApp, openApp } from '../harness/open-app';
import {
  openWhole,
  spoilInstalls,
  spoilRevisits,
  spoilUpdates,
  startOver,
  type Visitor,
} from '../harness/spoiled-store';
import { type Chosen, everyFile, LOGIN_PAGE, oneOfEachType } from '../harness/spoilings';
import { updateButton } from '../harness/update-at-hand';

const basePath = '/some/where/';

const readyOffline = (page: Page) => page.getByText('Ready offline.');

const visitor = (page: Page): Visitor => ({
  open: (url) => page.goto(url),
  evaluate: page.evaluate.bind(page),
});

/** At a later visit all of them are asked for, whatever the run. */
const CHOSEN: Chosen = WHOLE ? everyFile : oneOfEachType;

describe('a network that answers with its login page for a file of any type', () => {
  let app: OpenApp;
  let older: string;
  let newer: string;
  beforeAll(async () => {
    app = await openApp({ hasWorkers: false, isStored: true, basePath });
    older = await deriveAllNew('dist');
    newer = await deriveAllNew(older);
  });
  afterAll(async () => {
    await app.close();
    for (const folder of [older, newer]) await rm(folder, { recursive: true, force: true });
  });

  it('while the app is stored, leaves no app but a whole one', async () => {
    expect(await spoilInstalls(visitor(app.page), app.server, older, CHOSEN)).toEqual([]);
    await openWhole(visitor(app.page), app.server, older);
  });

  it('at a later visit, has nothing kept, and the rest is filled in once it is honest', async () => {
    expect(await spoilRevisits(visitor(app.page), app.server, older)).toEqual([]);
    await openWhole(visitor(app.page), app.server, older);
  });

  it('during an update, leaves what was stored as it was', async () => {
    const releases = { older, newer };
    expect(await spoilUpdates(visitor(app.page), app.server, releases, CHOSEN)).toEqual([]);
    await openWhole(visitor(app.page), app.server, older);
    await Promise.all([app.page.waitForEvent('load'), updateButton(app.page).click()]);
    await openWhole(visitor(app.page), app.server, newer);
  });
});

describe('an app that is not whole', () => {
  let app: OpenApp;
  beforeEach(async () => {
    app = await openApp({ hasWorkers: false, isStored: true, basePath, hash: '#kit' });
    await readyOffline(app.page).waitFor();
  });
  afterEach(() => app.close());

  it('at a first visit names the file, and is whole by itself once the network is honest', async () => {
    const { page, server } = app;
    await startOver(visitor(page), server);
    server.disturb((path) => (path === 'icons/icon-512.png' ? LOGIN_PAGE : undefined));
    await page.goto(`${server.url}#kit`);
    const told = page.getByText('the host, alters icons/icon-512.png');
    await told.waitFor();
    expect(await outOfSight(page, ['.news-line'])).toEqual([]);
    expect(await readyOffline(page).count()).toBe(0);
    server.disturb();
    await readyOffline(page).waitFor();
    expect(await told.count()).toBe(0);
  });

  it('because the system has cleared its files is whole again at the next visit', async () => {
    const { page, server } = app;
    await page.evaluate(async () => {
      for (const name of await caches.keys()) await caches.delete(name);
    });
    await page.reload();
    await readyOffline(page).waitFor();
    server.disturb(() => 'cut');
    await page.reload();
    await readyOffline(page).waitFor();
  });
});
