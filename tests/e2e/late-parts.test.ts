import type { Page } from 'playwright-core';
import { afterEach, expect, it } from 'vitest';
import { type OpenApp, openApp, untilFetched, untilRendered } from '../harness/open-app';
import { readTile } from '../harness/read-shot';
import { SCREENS } from '../harness/screens';
import { tapButton } from '../harness/thumb';
import { createFinger } from '../harness/touch';

let app: OpenApp;
afterEach(() => app.close());

const goTo = (page: Page, hash: string) =>
  page.evaluate((next) => {
    location.hash = next;
  }, hash);

/** The scripts that were asked for so far, without the hash of what is in them. */
const scriptsOf = ({ server }: OpenApp) =>
  server.requests.flatMap((path) => /assets\/([\w-]+)-[\w-]{8}\.js/.exec(path)?.[1] ?? []);

it('shows the first answer with the scripts of the first screen alone', async () => {
  app = await openApp({ hash: '#shot', hasWorkers: false });
  await app.page.locator('.answer-lead').waitFor();
  const order = scriptsOf(app);
  const first = order.slice(0, order.indexOf('first') + 1);
  expect(first).not.toEqual([]);
  expect(first.filter((name) => /Part|Control|Panel|late|more/.test(name))).toEqual([]);
});

it('has every screen at hand a moment after the first answer, whatever becomes of the network', async () => {
  app = await openApp({ hasWorkers: false });
  const { page, server, guard } = app;
  await untilFetched(page);
  await server.stop();
  guard.expectServerGone();
  for (const screen of SCREENS) {
    await goTo(page, screen);
    await untilRendered(page);
    expect(await page.locator('main').count()).toBe(1);
  }
  expect(guard.problems).toEqual([]);
});

it('says so kindly where a part cannot be had, keeps the rest going, and has it after all', async () => {
  app = await openApp({ hasWorkers: false });
  const { page, server } = app;
  server.disturb((path) => (path.includes('late-') ? 'cut' : undefined));
  await page.reload();
  await goTo(page, '#kit');
  const told = page.getByText('This part is not on the device yet');
  await told.waitFor();
  expect(await page.locator('main').count()).toBe(1);
  await goTo(page, '#shot');
  await page.locator('.answer-lead').waitFor();
  await page.locator('[data-opens="distance"]').tap();
  await told.first().waitFor();
  await goTo(page, '#kit');
  await told.waitFor();
  await Promise.all([page.waitForEvent('load'), page.getByText('Load again').click()]);
  await told.waitFor();
  server.disturb();
  await page.getByRole('heading', { name: 'Kit', level: 1 }).waitFor();
  expect(await told.count()).toBe(0);
});

it('loses no finger on the picture that was there before what answers it', async () => {
  app = await openApp({ hasWorkers: false });
  const { page } = app;
  let come = () => {};
  const held = new Promise<void>((resolve) => {
    come = resolve;
  });
  await page.route('**/late-*.js', async (route) => {
    await held;
    await route.continue();
  });
  await page.reload();
  await page.locator('.answer-lead').waitFor();
  const cut = await readTile(page, 'cut');
  const handle = await page.locator('.shooter-diagram .drag-handle').boundingBox();
  const picture = await page.locator('.shooter-diagram svg').boundingBox();
  if (!handle || !picture) throw new Error('there is no picture');
  const [x, y] = [handle.x + handle.width / 2, handle.y + handle.height / 2];
  const finger = await createFinger(page);
  const drawing = page.locator('.shooter-diagram svg');
  await finger.down(drawing, (x - picture.x) / picture.width, (y - picture.y) / picture.height);
  await finger.move(40, 0);
  await finger.up();
  expect(await readTile(page, 'cut')).toBe(cut);
  come();
  await expect.poll(() => readTile(page, 'cut')).not.toBe(cut);
  await tapButton(page, 'Undo');
  await expect.poll(() => readTile(page, 'cut')).toBe(cut);
});
