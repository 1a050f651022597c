import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, it } from 'vitest';
import type { Contents } from '../../src/store/contents';
import { bringIn, inventedBackup, pickBackup } from '../harness/backup-at-hand';
import { hostileHash } from '../harness/hostile-hashes';
import { MARKUP } from '../harness/hostile-trees';
import { type OpenApp, openApp } from '../harness/open-app';
import { settle } from '../harness/read-shot';
import { SCREENS } from '../harness/screens';
import { seededRandom } from '../harness/seeded-random';
import { watchPolicy } from '../harness/watch-policy';
import { CONTENTS } from '../store/backup/invented-contents';

const HASHES = 60;

let app: OpenApp;
beforeEach(async () => {
  app = await openApp({ hash: '#kit/backup', hasWorkers: false });
});
afterEach(() => app.close());

/** Goes to each of these addresses, and sees that the app is there and nothing has run. */
async function expectHarmless(page: Page, hashes: readonly string[]): Promise<void> {
  const broken = await watchPolicy(page);
  for (const hash of hashes) {
    await page.evaluate((next) => {
      location.hash = next;
    }, hash);
    await settle(page);
    const seen = await page.evaluate(() => ({
      places: document.querySelectorAll('#app nav a').length,
      made: document.querySelectorAll('#app img, #app script, #app iframe').length,
      isOverrun: 'isOverrun' in window,
    }));
    expect(seen, hash).toEqual({ places: 4, made: 0, isOverrun: false });
  }
  expect(await broken()).toEqual([]);
  expect(app.guard.problems).toEqual([]);
}

/** The same contents with markup wherever a person, or a file, can say what they like. */
function withMarkup(contents: Contents): Contents {
  const text = JSON.stringify(contents, (key, value: unknown) =>
    ['name', 'what'].includes(key) && typeof value === 'string' && value !== 'cue'
      ? MARKUP
      : value === 'mine' || value === 'position-bank' || value === 'attempt-curve'
        ? `${MARKUP}${value}`
        : value,
  );
  return JSON.parse(text) as Contents;
}

it('shows markup in a backup as the text it is, on every screen', async () => {
  const { page } = app;
  await pickBackup(page, await inventedBackup(withMarkup(CONTENTS)));
  for (const summary of await page.locator('.backup-changes summary').all()) await summary.click();
  expect(await page.locator('.backup-plan').textContent()).toContain(MARKUP);
  await bringIn(page);
  const own = encodeURIComponent(`${MARKUP}mine`);
  await expectHarmless(page, [...SCREENS, `kit/cues/${own}`, 'kit/cues']);
  expect(await page.locator('.kit-place').textContent()).toContain(MARKUP);
});

it(`opens at ${HASHES} hostile links as at any other`, async () => {
  const random = seededRandom(20_261_127);
  await expectHarmless(
    app.page,
    Array.from({ length: HASHES }, () => hostileHash(random)),
  );
});
