import { afterEach, beforeEach, expect, it } from 'vitest';
import { holdClock } from '../harness/held-clock';
import { type OpenApp, openApp, untilRendered } from '../harness/open-app';
import { readTiles, settle } from '../harness/read-shot';
import { openTile, tap, tapButton } from '../harness/thumb';
import { createFinger } from '../harness/touch';
import { pointOnTable, tapTable, untilCompared } from '../harness/touch-table';

let app: OpenApp;
beforeEach(async () => {
  app = await openApp({ hash: '#choose' });
});
afterEach(() => app.close());

const status = async () => (await app.page.locator('.status-line p').textContent()) ?? '';
const drawing = () => app.page.locator('.table-board svg');
const places = () =>
  app.page
    .locator('.board-ball')
    .evaluateAll((balls) => balls.map((ball) => ball.getAttribute('transform')));

async function layTwoBalls(): Promise<void> {
  const { page } = app;
  await tapButton(page, /^Positions/);
  await tapButton(page, 'New position');
  await tapButton(page, 'cue ball');
  await tapTable(page, { up: 0.25, across: 0.5 });
  await tapButton(page, '1 ball');
  await tapTable(page, { up: 0.7, across: 0.7 });
}

it('goes from an empty table to a filled-in Shot by a thumb', async () => {
  const { page } = app;
  await layTwoBalls();
  expect(await page.locator('.board-ball').count()).toBe(2);
  expect(await status()).toMatch(/^1 ball: 5\.[567] diamonds along, 2\.[789] from the left\.$/);
  await tapButton(page, 'Play');
  await tapButton(page, '1 ball');
  await tapButton(page, /^Into the far right pocket/);
  expect(await status()).toMatch(/^The 1 into the far right pocket: cut \d+° → right/);
  await tapButton(page, 'Ways');
  await untilCompared(page);
  await tap(page, page.locator('.way-row').first());
  await expect.poll(() => page.locator('.fan-path').count()).toBeGreaterThanOrEqual(3);
  expect(await drawing().getAttribute('aria-label')).toContain('Cue ball');
  const stroke = (await page.locator('.way-stroke').textContent()) ?? '';
  await tapButton(page, 'Aim it');
  await page.locator('.shot-place').waitFor();
  await settle(page);
  const strip = page.locator('.kit-strip-names');
  expect((await strip.textContent())?.trim()).toBe('1 into far right, as laid');
  const tiles = await readTiles(page);
  expect(tiles.cut).toContain('right');
  const speed = /([\d.]+) m\/s/.exec(stroke)?.[1] ?? 'none';
  expect(Number(/[\d.]+/.exec(tiles.speed ?? '')?.[0])).toBeCloseTo(Number(speed), 0);
  await openTile(page, 'cut');
  await tapButton(page, '½');
  await expect.poll(() => strip.textContent()).not.toContain('as laid');
});

it('drags a ball as far as the finger goes, without a jump, and takes that back', async () => {
  const { page } = app;
  await layTwoBalls();
  const before = await places();
  const finger = await createFinger(page);
  const held = page.locator('.board-ball').last();
  const from = await held.locator('.ball-body').boundingBox();
  await finger.down(held);
  await finger.move(-64, 32);
  const ball = await page.locator('.board-ball.is-selected .ball-body').boundingBox();
  expect((ball?.x ?? 0) - (from?.x ?? 0)).toBeCloseTo(-64, 0);
  expect((ball?.y ?? 0) - (from?.y ?? 0)).toBeCloseTo(32, 0);
  await finger.up();
  expect(await places()).not.toEqual(before);
  await tapButton(page, 'Undo');
  await expect.poll(places).toEqual(before);
});

it('puts a ball down that is dragged from beside the table, and tells its pockets', async () => {
  const { page } = app;
  await layTwoBalls();
  const { x, y } = await pointOnTable(page, { up: 0.4, across: 0.3 });
  const tray = page.getByRole('button', { name: '7 ball', exact: true });
  const from = await tray.boundingBox();
  if (!from) throw new Error('there is a ball beside the table');
  const finger = await createFinger(page);
  await finger.down(tray);
  await finger.move(x - from.x - from.width / 2, y + 30 - from.y - from.height / 2);
  await finger.up();
  expect(await page.locator('.board-ball').count()).toBe(3);
  expect(await status()).toMatch(/^7 ball: 3\.[12] diamonds along, 1\.[23] from the left\.$/);
  await page.locator('.pocket-marks').waitFor();
  await tapButton(page, 'Undo');
  await expect.poll(() => page.locator('.board-ball').count()).toBe(2);
});

it('nudges by a held button, and keeps the position over a reload', async () => {
  const { page } = app;
  await layTwoBalls();
  const before = await places();
  const box = await page.getByRole('button', { name: 'Move ball up' }).boundingBox();
  if (!box) throw new Error('there is no button to hold');
  await page.mouse.move(box.x + 20, box.y + 20);
  const clock = await holdClock(page);
  await page.mouse.down();
  const nudgedOnce = await places();
  expect(nudgedOnce).not.toEqual(before);
  await clock.frames(60);
  const after = await places();
  expect(after).not.toEqual(nudgedOnce);
  await page.mouse.up();
  await clock.frames(60);
  expect(await places()).toEqual(after);
  await clock.letGo();
  await page.reload();
  await untilRendered(page);
  await expect.poll(places).toEqual(after);
});

it('chooses ball and pocket on the drawing, and marks a zone there', async () => {
  const { page } = app;
  await layTwoBalls();
  await tapButton(page, 'Play');
  await tapTable(page, { up: 0.7, across: 0.7 });
  await tapTable(page, { up: 1, across: 0 });
  expect(await status()).toContain('The 1 into the far left pocket');
  await tapButton(page, 'Zone');
  await tapTable(page, { up: 0.5, across: 0.25 });
  await expect.poll(status).toMatch(/^Zone: 4\.0 diamonds along, 1\.0 from the left/);
});

it('puts its sheet on the left for a left hand, and never turns the table over', async () => {
  const { page } = app;
  const leftOf = async (selector: string) => (await page.locator(selector).boundingBox())?.x ?? 0;
  const shares = async () => {
    const box = await drawing().boundingBox();
    const ball = await page.locator('.board-ball .is-cue').boundingBox();
    return ((ball?.x ?? 0) - (box?.x ?? 0)) / (box?.width ?? 1);
  };
  await page.setViewportSize({ width: 844, height: 390 });
  await settle(page);
  const before = await shares();
  expect(await leftOf('.choose-sheet')).toBeGreaterThan(await leftOf('.table-board'));
  await page.goto(`${app.server.url}#kit/preferences`);
  await tapButton(page, 'left');
  await page.goto(`${app.server.url}#choose`);
  await page.locator('.choose-place').waitFor();
  expect(await leftOf('.choose-sheet')).toBeLessThan(await leftOf('.table-board'));
  expect(await shares()).toBeCloseTo(before, 2);
});

it('tells everything by lines and words where colours are forced', async () => {
  const { page } = app;
  await page.emulateMedia({ forcedColors: 'active' });
  await layTwoBalls();
  const filled = (isPressed: boolean) =>
    page
      .locator(`.palette-ball[aria-pressed="${isPressed}"]`)
      .first()
      .evaluate((button) => getComputedStyle(button).backgroundColor);
  expect(await filled(true)).not.toBe(await filled(false));
});

it('fetches the place without a network once it is ready offline', async () => {
  await app.close();
  app = await openApp({ isStored: true });
  const { page } = app;
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
  await app.context.setOffline(true);
  await page.reload();
  await untilRendered(page);
  await page.locator('.nav-bar a[href="#choose"]').tap();
  await page.locator('.choose-place').waitFor();
});
