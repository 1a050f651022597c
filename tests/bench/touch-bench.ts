import type { CDPSession, Page } from 'playwright-core';
import { openApp } from '../harness/open-app';
import { openTile } from '../harness/thumb';
import { pointOnTable } from '../harness/touch-table';
import type { BenchLine } from './bench-line';
import { noteTasks } from './task-times';

const MOVES = 60;
/** By then all that a drag needs has been compiled. */
const FIRST_MOVES = 30;
/** A touch screen reports a finger about as often as it shows a frame. */
const TOUCH_PERIOD_MS = 16;
/** By then whatever waited for the hand to rest has been done. */
const REST_MS = 400;

interface Point {
  readonly x: number;
  readonly y: number;
}

/** What a finger costs the page's own thread, ms; other work on the machine hardly lengthens it. */
interface TouchCost {
  readonly aMove: number;
  readonly longestTask: number;
  readonly lettingGo: number;
}

/** A finger that comes down somewhere, moves on a frame at a time, and lets go. */
async function touch(page: Page, from: Point, at: (move: number) => Point): Promise<TouchCost> {
  const devtools = await page.context().newCDPSession(page);
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', point?: Point) =>
    devtools.send('Input.dispatchTouchEvent', { type, touchPoints: point ? [point] : [] });
  const move = async (moves: number) => {
    for (let step = 1; step <= moves; step++) {
      await send('touchMove', at(step));
      await page.waitForTimeout(TOUCH_PERIOD_MS);
    }
  };
  await send('touchStart', from);
  await move(FIRST_MOVES);
  const moved = await tasksOf(page, devtools, () => move(MOVES));
  const letGo = await tasksOf(page, devtools, async () => {
    await send('touchEnd');
    await page.waitForTimeout(REST_MS);
  });
  return {
    aMove: moved.reduce((sum, task) => sum + task, 0) / MOVES,
    longestTask: moved[0] ?? Number.NaN,
    lettingGo: letGo[0] ?? Number.NaN,
  };
}

async function tasksOf(page: Page, devtools: CDPSession, work: () => Promise<void>) {
  const noted = await noteTasks(page, devtools);
  await work();
  return noted();
}

async function middleOf(page: Page, selector: string): Promise<Point> {
  const box = await page.locator(selector).first().boundingBox();
  if (!box) throw new Error(`there is no ${selector} to touch`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

const sideways = ({ x, y }: Point) => {
  return (move: number) => ({ x: x + 120 * Math.sin(move / 9), y });
};

/** What is touched, and the same on a page with nothing on it. */
const TOUCHED: Readonly<Record<string, (page: Page) => Promise<TouchCost>>> = {
  async 'a slider'(page) {
    await openTile(page, 'distance');
    const middle = await middleOf(page, 'input[type=range]');
    return touch(page, middle, sideways(middle));
  },
  async 'the ball to be played'(page) {
    await page.locator('.nav-bar a[href="#choose"]').tap();
    const middle = await pointOnTable(page, { up: 0.45, across: 0.5 });
    const ball = await middleOf(page, '.board-ball.is-played .ball-body');
    return touch(page, ball, (move) => ({
      x: middle.x + 60 * Math.sin(move / 12),
      y: middle.y + 90 * Math.cos(move / 12),
    }));
  },
  async 'a held button'(page) {
    await openTile(page, 'distance');
    const middle = await middleOf(page, '[aria-label="Farther"]');
    return touch(page, middle, () => middle);
  },
};

async function onBarePage(page: Page): Promise<TouchCost> {
  await page.goto('about:blank');
  await page.setContent('<div style="height:100vh;touch-action:none"></div>');
  const middle = { x: 195, y: 422 };
  return touch(page, middle, sideways(middle));
}

/** What the app does for a finger, each beside the same on a bare page of the same run. */
export async function touchBench(): Promise<readonly BenchLine[]> {
  const lines: BenchLine[] = [];
  for (const [what, measure] of Object.entries(TOUCHED)) {
    const app = await openApp();
    try {
      const cost = await measure(app.page);
      const bare = await onBarePage(app.page);
      lines.push(
        {
          name: `work a move, ${what}, over a bare page`,
          value: cost.aMove / bare.aMove,
          unit: '×',
        },
        {
          name: `longest task, ${what}, over a bare page’s move`,
          value: cost.longestTask / bare.aMove,
          unit: '×',
        },
        {
          name: `letting go, ${what}, over a bare page’s move`,
          value: cost.lettingGo / bare.aMove,
          unit: '×',
        },
      );
    } finally {
      await app.close();
    }
  }
  return lines;
}
