import type { CDPSession } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import {
  bringIn,
  inventedBackup,
  pickBackup,
  saveBackup,
  untilShotNoted,
} from '../harness/backup-at-hand';
import { fillStorage } from '../harness/fill-storage';
import { PHONE, sharedBrowser } from '../harness/launch-browser';
import { beginTrial, tapFigure } from '../harness/measure-at-table';
import { type OpenApp, openApp, untilOfflineReady, untilRendered } from '../harness/open-app';
import { readingsKept, takeReading } from '../harness/readings-kept';
import { startStaticServer } from '../harness/static-server';
import { tapButton } from '../harness/thumb';

let app: OpenApp;
let session: CDPSession;
const open = async () => {
  app = await openApp({ hash: '#kit/measure' });
  session = await app.context.newCDPSession(app.page);
};
const close = async () => {
  expect(app.guard.problems).toEqual([]);
  await app.close();
};

const news = async (page = app.page) => (await page.locator('.news-bar').textContent()) ?? '';
const goTo = async (hash: string, page = app.page) => {
  await page.goto(`${app.server.url}#${hash}`);
  await page.reload();
  await untilRendered(page);
};

const clearDatabase = () =>
  session.send('Storage.clearDataForOrigin', {
    origin: app.server.origin,
    storageTypes: 'indexeddb',
  });

describe('storage that is lost under the page', () => {
  beforeAll(open);
  afterAll(close);

  it('taken away under the page goes on with all that the page knows', async () => {
    const { page } = app;
    await takeReading(page, '4');
    await clearDatabase();
    await expect.poll(() => news()).toContain('it opens again by itself');
    await takeReading(page, '5');
    await expect.poll(() => readingsKept(page)).toEqual([4, 5]);
    await expect.poll(() => news()).toBe('');
  });

  it('deleted from outside says so, and goes on with all that the page knows', async () => {
    const { page } = app;
    await page.evaluate(
      () =>
        new Promise((resolve, reject) => {
          const deleting = indexedDB.deleteDatabase('leeway');
          deleting.onsuccess = resolve;
          deleting.onerror = reject;
        }),
    );
    await expect.poll(() => news()).toContain('was deleted from outside');
    expect(await news()).not.toContain('newer version');
    await takeReading(page, '6');
    await expect.poll(() => readingsKept(page)).toEqual([4, 5, 6]);
    await expect.poll(() => news()).toBe('');
  });
});

describe('storage without room', () => {
  it('for a second copy keeps the reading, and says so', async () => {
    await open();
    const { page } = app;
    // The copy of what a first visit begins with finds room yet.
    await page.waitForFunction(() => localStorage.getItem('leeway.copy') !== null);
    await page.evaluate(() => {
      for (let size = 1_000_000; size >= 1; size = Math.floor(size / 2)) {
        try {
          for (let piece = 0; ; piece++) {
            localStorage.setItem(`filler-${size}-${piece}`, ' '.repeat(size));
          }
        } catch {
          // Full but for less than this.
        }
      }
    });
    await takeReading(page, '4');
    await expect.poll(() => news()).toContain('no room for a second copy');
    expect(await readingsKept(page)).toEqual([4]);
    await tapButton(page, 'Backup');
    await page.locator('.backup-storage', { hasText: 'no room for a second copy' }).waitFor();
    await expect.poll(() => news()).toBe('');
    await close();
  });

  it('for anything is told of, keeps the reading on screen, and saves it once there is room', async () => {
    const server = await startStaticServer({ folder: 'dist' });
    const { origin, url } = server;
    // A browser remembers for a while how much room there was: here there never was more.
    const context = await (await sharedBrowser()).newContext(PHONE);
    const page = await context.newPage();
    const quota = await context.newCDPSession(page);
    await quota.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 4_000_000 });
    await page.goto(`${url}#kit/measure`);
    await untilOfflineReady(page);
    await takeReading(page, '4');
    await expect.poll(() => readingsKept(page)).toEqual([4]);
    await fillStorage(page);
    await takeReading(page, '5');
    await expect.poll(() => news(page)).toContain('storage of this browser is full');
    expect(await news(page)).toContain('Not kept yet: a reading');
    expect(await page.locator('.attempt-list li').count()).toBe(2);
    await tapButton(page, 'Backup');
    expect((await saveBackup(page)).text.match(/"landingM":/g)).toHaveLength(2);
    await quota.send('Storage.overrideQuotaForOrigin', { origin });
    // Whatever comes first, the tap or the app's own next try: something to tap stands there.
    await page.getByRole('button', { name: /^(Try again|OK)$/ }).tap();
    await expect.poll(() => news(page)).toBe('');
    expect(await readingsKept(page)).toEqual([4, 5]);
    await context.close();
    await server.stop();
  });
});

describe('storage that does not give back what was kept', () => {
  beforeAll(open);
  afterAll(close);

  it('but comes back empty offers the copy of what was there', async () => {
    const { page } = app;
    await takeReading(page, '4');
    await page.waitForFunction(() => localStorage.getItem('leeway.copy')?.includes('landingM'));
    await page.goto('about:blank');
    await clearDatabase();
    await goTo('kit/measure');
    await expect.poll(() => news()).toMatch(/lost what was kept\. A copy .* is here/);
    await untilShotNoted(page);
    await tapButton(page, 'Bring it back…');
    await page.getByText(/is whole/).waitFor();
    await bringIn(page);
    expect(await readingsKept(page)).toEqual([4]);
    expect(await news()).toBe('');
  });

  it('as it does not open lets the visit run from the copy, and loses no reading of it', async () => {
    const { page } = app;
    await page.waitForFunction(() => localStorage.getItem('leeway.copy')?.includes('landingM'));
    await page.evaluate(() => sessionStorage.setItem('is-shut', '1'));
    await page.addInitScript(() => {
      if (sessionStorage.getItem('is-shut') === null) return;
      IDBFactory.prototype.open = () => {
        throw new DOMException('Internal error', 'UnknownError');
      };
    });
    await goTo('kit/measure');
    await expect.poll(() => news()).toContain('did not open');
    const loading = page.waitForEvent('load');
    await tapButton(page, 'Use it');
    await loading;
    await page.locator('.attempt-list li').waitFor();
    await takeReading(page, '5');
    await page.evaluate(() => sessionStorage.removeItem('is-shut'));
    await goTo('kit/measure');
    expect(await readingsKept(page)).toEqual([4, 5]);
    expect(await news()).toBe('');
  });
});

describe('another tab', () => {
  beforeEach(open);
  afterEach(close);

  it('that has a newer version is told of, and what is read meanwhile is not lost', async () => {
    const { page } = app;
    const newer = await app.context.newPage();
    await goTo('kit', newer);
    const isDone = await newer.evaluate(
      () =>
        new Promise<string>((resolve) => {
          const opening = indexedDB.open('leeway', 99);
          opening.onsuccess = () => resolve('upgraded');
          opening.onblocked = () => resolve('blocked');
        }),
    );
    expect(isDone).toBe('upgraded');
    await expect.poll(() => news()).toContain('A newer version of Leeway is open');
    await page.bringToFront();
    await takeReading(page, '5');
    expect(await page.evaluate(() => localStorage.getItem('leeway.unsaved'))).toContain('landingM');
    const loading = page.waitForEvent('load');
    await tapButton(page, 'Reload');
    await loading;
    await page.locator('.attempt-list li').waitFor();
  });

  it('that brought a backup in is told of, and not written over', async () => {
    const { page } = app;
    const other = await app.context.newPage();
    await goTo('kit/backup', other);
    await pickBackup(other, await inventedBackup());
    await bringIn(other);
    await page.bringToFront();
    await goTo('kit/preferences', other);
    await page.evaluate(() => {
      location.hash = '#kit/preferences';
    });
    await page.bringToFront();
    await tapButton(page, 'km/h');
    await expect.poll(() => news()).toContain('brought in in another tab');
    const loading = page.waitForEvent('load');
    await tapButton(page, 'Reload');
    await loading;
    await goTo('shot');
    expect(await page.locator('.kit-strip').textContent()).toContain('My “good” cue – №1');
    expect(await page.locator('[data-opens="speed"]').textContent()).toContain('m/s');
  });
});

describe('how safe it is', () => {
  beforeAll(open);
  afterAll(close);

  it('is asked for in the tap that saves the first reading, and told on the Backup page', async () => {
    const { page } = app;
    await goTo('kit/backup');
    await expect
      .poll(() => page.locator('.backup-storage').textContent())
      .toMatch(/this browser may clear.* of \d+ MB are taken/);
    await page.evaluate(() => {
      StorageManager.prototype.persist = () => {
        document.documentElement.dataset.asked = String(navigator.userActivation.isActive);
        return new Promise(() => {});
      };
      location.hash = '#kit/measure';
    });
    const asked = () => page.evaluate(() => document.documentElement.dataset.asked);
    await beginTrial(page, 'Line');
    await tapButton(page, 'It is placed');
    await tapButton(page, 'Played');
    expect(await asked()).toBeUndefined();
    await tapFigure(page, '4', 'left');
    expect(await asked()).toBe('true');
    await expect.poll(() => readingsKept(page)).toEqual([4]);
  });
});
