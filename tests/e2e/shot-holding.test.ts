import type { CDPSession } from 'playwright-core';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { type OpenApp, openApp } from '../harness/open-app';
import { readTiles } from '../harness/read-shot';
import { openTile, tapButton } from '../harness/thumb';

let app: OpenApp;
let cdp: CDPSession;
beforeEach(async () => {
  app = await openApp();
  cdp = await app.context.newCDPSession(app.page);
  await openTile(app.page, 'distance');
});
afterEach(() => app.close());

const distanceM = async () =>
  Number.parseFloat((await readTiles(app.page)).distance?.slice(8) ?? '');

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
  await app.page.waitForTimeout(1500);
  await touch('touchEnd');
  const after = await distanceM();
  expect(after).toBeGreaterThan(before + 0.05);
  await app.page.waitForTimeout(600);
  expect(await distanceM()).toBe(after);
  await tapButton(app.page, /Undo/);
  expect(await distanceM()).toBe(before);
});

it('takes back a press that the phone takes away at once', async () => {
  const before = await distanceM();
  await touch('touchStart');
  expect(await distanceM()).toBeCloseTo(before + 0.01, 9);
  await touch('touchCancel');
  await app.page.waitForTimeout(800);
  expect(await distanceM()).toBe(before);
});

it('leaves a phone four times slower time for sixty frames a second while held', async () => {
  // The thread's own time, which other work on this machine does not lengthen.
  await cdp.send('Performance.enable', { timeDomain: 'threadTicks' });
  const busyS = async () => {
    const { metrics } = await cdp.send('Performance.getMetrics');
    return metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN;
  };
  // From near enough that the hold is still on its way when the count ends.
  await tapButton(app.page, '0.25');
  const before = await distanceM();
  await touch('touchStart');
  await app.page.waitForTimeout(500);
  const busyBeforeS = await busyS();
  const frames = await app.page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        let count = 0;
        const end = performance.now() + 2000;
        const tick = (now: number) => {
          count += 1;
          if (now < end) requestAnimationFrame(tick);
          else resolve(count);
        };
        requestAnimationFrame(tick);
      }),
  );
  const perFrameMs = ((await busyS()) - busyBeforeS) * (1000 / frames);
  await touch('touchEnd');
  expect(await distanceM()).toBeGreaterThan(before + 0.5);
  expect(perFrameMs).toBeGreaterThan(0);
  expect(perFrameMs).toBeLessThan(1000 / 60 / 4);
});
