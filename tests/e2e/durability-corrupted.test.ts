import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { saveBackup } from '../harness/backup-at-hand';
import { CAMPAIGN_TIMEOUT_MS, campaignSize, tell } from '../harness/campaign-size';
import type { LyingRow } from '../harness/corrupt-rows';
import { type OpenApp, openApp, untilRendered } from '../harness/open-app';
import { seededRandom } from '../harness/seeded-random';
import { lyingRows } from '../store/lying-rows';

const DATABASES = campaignSize(4, 60);

const PLACES = [
  'shot',
  'choose',
  'kit',
  'kit/cues',
  'kit/tables',
  'kit/measure',
  'kit/preferences',
];

let app: OpenApp;
beforeEach(async () => {
  app = await openApp({ hasWorkers: false });
});
afterEach(async () => {
  expect(app.guard.problems).toEqual([]);
  await app.close();
});

/** Puts rows in place of all there is, behind the app's back. */
async function layDown(page: Page, rows: readonly LyingRow[]): Promise<void> {
  await page.evaluate(async (given) => {
    const database = await new Promise<IDBDatabase>((resolve) => {
      const opening = indexedDB.open('leeway');
      opening.onsuccess = () => resolve(opening.result);
    });
    const names = [...database.objectStoreNames];
    const transaction = database.transaction(names, 'readwrite');
    for (const name of names) transaction.objectStore(name).clear();
    for (const { store, row } of given) {
      if (store === 'desk') transaction.objectStore(store).put(row, 'current');
      else transaction.objectStore(store).put(row);
    }
    await new Promise((resolve, reject) => {
      transaction.oncomplete = resolve;
      transaction.onabort = () => reject(transaction.error);
    });
    database.close();
  }, rows);
}

it(
  `shows every place over ${DATABASES} databases gone bad, and what of them was set aside`,
  async () => {
    const { page } = app;
    let aside = 0;
    for (let seed = 1; seed <= DATABASES; seed++) {
      await layDown(page, lyingRows(seededRandom(1000 + seed)));
      await page.goto(`${app.server.url}#kit/backup`);
      await page.reload();
      await untilRendered(page);
      await page.locator('.backup-storage').waitFor();
      const count = await page.locator('.backup-storage summary').textContent();
      expect([seed, count]).toEqual([seed, expect.stringMatching(/^\d+ set aside as found$/)]);
      // What is told above moves the page as it comes, and a tap would then land beside.
      await page.getByText('Something kept here was damaged').waitFor();
      const saved = await saveBackup(page);
      const rows = saved.text.match(/^\{"store":"set-aside"/gm) ?? [];
      expect([seed, Number.parseInt(count ?? '', 10)]).toEqual([seed, rows.length]);
      aside += rows.length;
      for (const place of PLACES) {
        await page.goto(`${app.server.url}#${place}`);
        await untilRendered(page);
        const main = await page.locator('main').textContent();
        expect([seed, place, main]).toEqual([seed, place, expect.stringMatching(/\w{3}/)]);
        expect(main).not.toContain('This cannot be shown');
      }
      expect([seed, app.guard.problems]).toEqual([seed, []]);
    }
    tell(`${DATABASES} databases gone bad in the browser: ${aside} rows set aside and exported`);
  },
  CAMPAIGN_TIMEOUT_MS,
);
