import type { CDPSession } from 'playwright-core';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { type OpenApp, openApp } from '../harness/open-app';
import { pointOnTable } from '../harness/touch-table';

let app: OpenApp;
let cdp: CDPSession;
beforeEach(async () => {
  app = await openApp({ hash: '#choose' });
  cdp = await app.context.newCDPSession(app.page);
  // The thread's own time, which other work on this machine does not lengthen.
  await cdp.send('Performance.enable', { timeDomain: 'threadTicks' });
});
afterEach(() => app.close());

const busyS = async () => {
  const { metrics } = await cdp.send('Performance.getMetrics');
  return metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN;
};

const MOVES = 150;
const PERIOD_MS = 16;

it('leaves a phone four times slower time for sixty frames a second while a ball is dragged', async () => {
  const { page } = app;
  const ball = page.locator('.board-ball').first().locator('.ball-body');
  const box = await ball.boundingBox();
  if (!box) throw new Error('there is no ball to drag');
  const middle = await pointOnTable(page, { up: 0.45, across: 0.5 });
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', at?: { x: number; y: number }) =>
    cdp.send('Input.dispatchTouchEvent', { type, touchPoints: at ? [at] : [] });
  await send('touchStart', { x: box.x + box.width / 2, y: box.y + box.height / 2 });
  await send('touchMove', middle);
  await page.waitForTimeout(200);
  const busyBeforeS = await busyS();
  const places = new Set<string>();
  for (let move = 1; move <= MOVES; move++) {
    const angle = move / 12;
    const by = { x: 60 * Math.sin(angle), y: 90 * Math.cos(angle) };
    await send('touchMove', { x: middle.x + by.x, y: middle.y + by.y });
    await page.waitForTimeout(PERIOD_MS);
    if (move % 15 === 0) places.add(JSON.stringify(await ball.boundingBox()));
  }
  // All that a move costs, its frame's drawing too: no more than one of them falls into a frame.
  const perMoveMs = (1000 * ((await busyS()) - busyBeforeS)) / MOVES;
  await send('touchEnd');
  expect(places.size).toBeGreaterThan(5);
  expect(perMoveMs).toBeGreaterThan(0);
  expect(perMoveMs).toBeLessThan(1000 / 60 / 4);
});
