import type { CDPSession, Page } from 'playwright-core';
import { afterEach, expect, it } from 'vitest';
import { noteTasks } from '../bench/task-times';
import { type OpenApp, openApp } from '../harness/open-app';
import { openTile } from '../harness/thumb';
import { pointOnTable } from '../harness/touch-table';

let app: OpenApp;
afterEach(() => app.close());

/** A task that takes longer than 50 ms keeps a finger waiting so that it is felt (RAIL). */
const LONG_MS = 50;
/**
 * How much slower the phone is. Its tasks are reckoned from the thread's own time here: a processor
 * that the browser slows down by stopping its threads is slowed by all else that runs here too.
 */
const SLOWDOWN = 4;
const MOVES = 40;
/** A touch screen reports a finger about as often as it shows a frame. */
const PERIOD_MS = 16;

interface Point {
  readonly x: number;
  readonly y: number;
}

async function middleOf(page: Page, selector: string): Promise<Point> {
  const box = await page.locator(selector).first().boundingBox();
  if (!box) throw new Error(`there is no ${selector} to drag`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

const send = (cdp: CDPSession, type: 'touchStart' | 'touchMove' | 'touchEnd', at?: Point) =>
  cdp.send('Input.dispatchTouchEvent', { type, touchPoints: at ? [at] : [] });

/** Drags from a place, and then lets go: what each task cost a phone four times slower, ms. */
async function tasksOfDrag(from: Point, at: (move: number) => Point) {
  const { page } = app;
  const cdp = await app.context.newCDPSession(page);
  await send(cdp, 'touchStart', from);
  const move = async (moves: number) => {
    for (let step = 1; step <= moves; step++) {
      await send(cdp, 'touchMove', at(step));
      await page.waitForTimeout(PERIOD_MS);
    }
  };
  // What is played for the first time has yet to be compiled.
  await move(MOVES / 2);
  const dragged = await noteTasks(page, cdp);
  await move(MOVES);
  const whileDragged = await dragged();
  const letGo = await noteTasks(page, cdp);
  await send(cdp, 'touchEnd');
  await page.waitForTimeout(400);
  const onLettingGo = await letGo();
  const scaled = (tasks: readonly number[]) => tasks.map((taskMs) => taskMs * SLOWDOWN);
  return { whileDragged: scaled(whileDragged), onLettingGo: scaled(onLettingGo) };
}

/** All but a twentieth of the moves' tasks: now and then the browser itself has something to tidy. */
function expectShort({ whileDragged, onLettingGo }: Awaited<ReturnType<typeof tasksOfDrag>>) {
  expect(whileDragged.length).toBeGreaterThan(MOVES);
  expect(whileDragged[0]).toBeGreaterThan(1);
  expect(whileDragged[MOVES / 20]).toBeLessThan(LONG_MS);
  expect(onLettingGo[0]).toBeGreaterThan(0);
  expect(onLettingGo[0]).toBeLessThan(LONG_MS);
}

it('keeps no finger waiting that drags a slider on a phone four times slower, or lets it go', async () => {
  app = await openApp();
  await openTile(app.page, 'distance');
  const middle = await middleOf(app.page, '[role=slider], input[type=range]');
  const at = (move: number) => ({ x: middle.x + 120 * Math.sin(move / 9), y: middle.y });
  expectShort(await tasksOfDrag(middle, at));
});

it('keeps no finger waiting that drags the ball to be played on a phone four times slower, or lets it go', async () => {
  app = await openApp({ hash: '#choose' });
  const middle = await pointOnTable(app.page, { up: 0.45, across: 0.5 });
  const ball = await middleOf(app.page, '.board-ball.is-played .ball-body');
  const at = (move: number) => ({
    x: middle.x + 60 * Math.sin(move / 12),
    y: middle.y + 90 * Math.cos(move / 12),
  });
  expectShort(await tasksOfDrag(ball, at));
});
