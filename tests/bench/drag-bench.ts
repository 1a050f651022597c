import type { CDPSession, Page } from 'playwright-core';
import { openApp } from '../harness/open-app';
import type { BenchLine } from './bench-line';
import { slowDown } from './slowdown';

const MOVES = 120;
/** A touch screen reports a finger about as often as it shows a frame. */
const TOUCH_PERIOD_MS = 16;
const WANTED_SLOWDOWN = 4;
/** By then all that a drag needs has been compiled. */
const FIRST_MOVES = 20;

declare global {
  interface Window {
    paintDelaysMs: number[];
    longTasksMs: number[];
  }
}

/**
 * From now on the page notes, for each move of a finger, how long until the next frame is out, and
 * tasks that take longer than 50 ms by the clock.
 */
async function notePaints(page: Page): Promise<void> {
  await page.evaluate(() => {
    window.paintDelaysMs = [];
    window.longTasksMs = [];
    new PerformanceObserver((list) => {
      window.longTasksMs.push(...list.getEntries().map(({ duration }) => duration));
    }).observe({ type: 'longtask' });
    addEventListener(
      'pointermove',
      ({ timeStamp }) => {
        requestAnimationFrame(() => {
          const painted = new MessageChannel();
          painted.port1.onmessage = () => window.paintDelaysMs.push(performance.now() - timeStamp);
          painted.port2.postMessage(null);
        });
      },
      { capture: true },
    );
  });
}

/** Drags a finger to and fro along the middle of a box: the delays, sorted, and long tasks, ms. */
async function drag(
  page: Page,
  cdp: CDPSession,
  box: { x: number; y: number; width: number; height: number },
): Promise<{ readonly delays: readonly number[]; readonly longTasks: readonly number[] }> {
  const at = (move: number) => ({
    x: box.x + box.width * (0.5 + 0.4 * Math.sin(move / 9)),
    y: box.y + box.height / 2,
  });
  const send = (type: 'touchStart' | 'touchMove', move: number) =>
    cdp.send('Input.dispatchTouchEvent', { type, touchPoints: [at(move)] });
  await send('touchStart', 0);
  for (let move = 1; move <= MOVES; move++) {
    await send('touchMove', move);
    if (move === FIRST_MOVES) await page.evaluate(() => window.longTasksMs.splice(0));
    await page.waitForTimeout(TOUCH_PERIOD_MS);
  }
  await cdp.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await page.waitForTimeout(200);
  const delays = await page.evaluate(() => window.paintDelaysMs.splice(0));
  if (delays.length < MOVES / 4) throw new Error(`only ${delays.length} moves were seen`);
  const longTasks = await page.evaluate(() => window.longTasksMs.splice(0));
  return { delays: delays.sort((a, b) => a - b), longTasks };
}

const quantile = (sorted: readonly number[], share: number) =>
  sorted[Math.floor(share * (sorted.length - 1))] ?? Number.NaN;

/**
 * Input to paint while a slider is dragged in the built app on a processor slowed fourfold, beside
 * the same drag on a bare page of the same run.
 */
export async function dragBench(): Promise<readonly BenchLine[]> {
  const app = await openApp();
  const { page } = app;
  try {
    const cdp = await page.context().newCDPSession(page);
    await page.getByRole('button', { name: /^Distance/ }).tap();
    const box = await page.getByRole('slider').first().boundingBox();
    if (box === null) throw new Error('there is no slider to drag');
    const slowdown = await slowDown(page, cdp, WANTED_SLOWDOWN);
    await notePaints(page);
    const { delays: dragged, longTasks } = await drag(page, cdp, box);
    await page.goto('about:blank');
    await page.setContent('<div style="height:100vh;touch-action:none"></div>');
    await notePaints(page);
    const { delays: bare } = await drag(page, cdp, box);
    return [
      { name: 'slowdown of the processor, measured', value: slowdown, unit: '×' },
      { name: 'input to paint while dragging, median', value: quantile(dragged, 0.5), unit: 'ms' },
      { name: 'input to paint while dragging, p95', value: quantile(dragged, 0.95), unit: 'ms' },
      {
        name: `tasks over 50 ms in ${MOVES - FIRST_MOVES} moves`,
        value: longTasks.length,
        unit: '',
      },
      { name: 'the same on a bare page, median', value: quantile(bare, 0.5), unit: 'ms' },
      {
        name: 'dragging over a bare page, median',
        value: quantile(dragged, 0.5) / quantile(bare, 0.5),
        unit: '×',
      },
    ];
  } finally {
    await app.close();
  }
}
