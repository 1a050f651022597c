import { rm } from 'node:fs/promises';
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { deriveVersion } from '../harness/derive-version';
import { type OpenApp, openApp, untilOfflineReady } from '../harness/open-app';
import { PATIENCE_MS } from '../harness/patience';
import { openTile } from '../harness/thumb';
import {
  countLoads,
  lookForUpdate,
  takeUpdate,
  updateButton,
  versionOf,
} from '../harness/update-at-hand';

let next: string;
let app: OpenApp;
beforeAll(async () => {
  next = await deriveVersion('next');
});
afterAll(() => rm(next, { recursive: true, force: true }));
beforeEach(async () => {
  app = await openApp({ hasWorkers: false, isStored: true });
  await untilOfflineReady(app.page);
});
afterEach(() => app.close());

it('is offered without a word lost of what is being typed, however long it is left', async () => {
  const { page } = app;
  await openTile(page, 'distance');
  const field = page.getByRole('textbox', { name: 'Distance' });
  await field.fill('');
  await field.pressSequentially('1.');
  const counted = countLoads(page);
  app.server.deploy(next);
  await lookForUpdate(page);
  await updateButton(page).waitFor();
  await page.keyboard.type('23');
  expect(await field.inputValue()).toBe('1.23');
  expect(await field.evaluate((element) => element === document.activeElement)).toBe(true);
  expect(counted.loads).toBe(0);
  expect(app.guard.problems).toEqual([]);
});

it('that is left alone while the server goes can be taken when the app is opened again', async () => {
  const { page } = app;
  app.server.deploy(next);
  await lookForUpdate(page);
  await updateButton(page).waitFor();
  await app.server.stop();
  app.guard.expectServerGone();

  await page.reload();
  const before = await versionOf(page);
  await takeUpdate(page);
  await expect
    .poll(() => versionOf(page).catch(() => before), { timeout: PATIENCE_MS })
    .not.toBe(before);
  await page.locator('.answer-lead').waitFor();
  expect(app.guard.problems).toEqual([]);
});
