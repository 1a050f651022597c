import type { CDPSession } from 'playwright-core';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { type HeldClock, holdClock } from '../harness/held-clock';
import { type OpenApp, openApp } from '../harness/open-app';
import { readTile } from '../harness/read-shot';
import { openTile, tapButton } from '../harness/thumb';

let app: OpenApp;
let cdp: CDPSession;
let clock: HeldClock;
beforeEach(async () => {
  app = await openApp({ hasWorkers: false });
  cdp = await app.context.newCDPSession(app.page);
  await openTile(app.page, 'distance');
  clock = await holdClock(app.page);
});
afterEach(() => app.close());

const distanceM = async () => Number.parseFloat((await readTile(app.page, 'distance')).slice(8));

async function touch(type: 'touchStart' | 'touchEnd' | 'touchCancel'): Promise<void> {
  const box = await app.page.getByRole('button', { name: 'Farther' }).boundingBox();
  if (!box) throw new Error('there is no button');
  const touchPoints =
    type === 'touchStart' ? [{ x: box.x + box.width / 2, y: box.y + box.height / 2 }] : [];
  await cdp.send('Input.dispatchTouchEvent', { type, touchPoints });
}

it('steps on while held, stops when let go, and is undone as one', async () => {
  const before = await distanceM();
  await touch('touchStart');
  await clock.frames(90);
  await touch('touchEnd');
  const after = await distanceM();
  expect(after).toBeGreaterThan(before + 0.05);
  await clock.frames(60);
  expect(await distanceM()).toBe(after);
  await clock.letGo();
  await tapButton(app.page, /Undo/);
  expect(await distanceM()).toBe(before);
});

it('takes back a press that the phone takes away at once', async () => {
  const before = await distanceM();
  await touch('touchStart');
  expect(await distanceM()).toBeCloseTo(before + 0.01, 9);
  await touch('touchCancel');
  await clock.frames(60);
  expect(await distanceM()).toBe(before);
});
