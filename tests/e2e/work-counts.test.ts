import type { CDPSession } from 'playwright-core';
import { afterEach, expect, it } from 'vitest';
import { countWork, type Work } from '../harness/count-work';
import { type HeldClock, holdClock } from '../harness/held-clock';
import { type OpenApp, openApp, untilOfflineReady } from '../harness/open-app';
import { PATIENCE_MS } from '../harness/patience';
import { untilAssessed } from '../harness/read-room';
import { openTile } from '../harness/thumb';
import { pointOnTable } from '../harness/touch-table';
import { untilKept } from '../harness/until-kept';

/**
 * What a phone has to do for a finger and for a start, in counts. They are the same to a few in ten
 * thousand however busy the machine is, so that each may be a few per cent above what was counted:
 * a second solve a move, or one component more that draws itself anew, is beyond it.
 */
let app: OpenApp;
let cdp: CDPSession;
afterEach(() => app.close());

interface Point {
  readonly x: number;
  readonly y: number;
}

async function middleOf(selector: string): Promise<Point> {
  const box = await app.page.locator(selector).first().boundingBox();
  if (!box) throw new Error(`there is no ${selector} to touch`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', at?: Point) =>
  cdp.send('Input.dispatchTouchEvent', { type, touchPoints: at ? [at] : [] });

/** Moves the finger on, and waits until the page has heard of it: a browser may hold moves back. */
async function moveTo(point: Point): Promise<void> {
  const heard = await app.page.evaluateHandle(() => ({
    move: new Promise((resolve) => {
      addEventListener('pointermove', resolve, { capture: true, once: true });
    }),
  }));
  await send('touchMove', point);
  await heard.evaluate(async ({ move }) => {
    await move;
  });
  await heard.dispose();
}

/** Stops the clock once all that a start leaves for later is done, and puts a finger down. */
async function pressAt(point: Point) {
  const { page, server, context } = app;
  cdp = await context.newCDPSession(page);
  // The service worker keeps to no clock, and tells the page when it is done.
  await untilOfflineReady(page);
  // The last of what a first visit does: its timer was set before the clock stands still.
  await page.waitForFunction(() => localStorage.getItem('leeway.copy') !== null);
  const clock = await holdClock(page);
  const take = await countWork(page, server.origin);
  await atRest(clock, take);
  await send('touchStart', point);
  return { clock, take };
}

const MOVES = 24;
/** One a move; and in all of a drag the browser may once lay out by itself. */
const LAYOUTS = 1 + 1 / MOVES;

/** Drags from a place to one well apart, on from there a move a frame, and lets go: what both cost. */
async function drag(from: Point, at: (move: number) => Point) {
  const { clock, take } = await pressAt(from);
  await moveTo(at(0));
  await clock.frames(1);
  await take();
  for (let move = 1; move <= MOVES; move++) {
    await moveTo(at(move));
    await clock.frames(1);
  }
  const moved = await take();
  await send('touchEnd');
  return { moved, letGo: await atRest(clock, take) };
}

/** All that is done until nothing more is, with whatever the database and the workers answer. */
async function atRest(clock: HeldClock, take: () => Promise<Work>): Promise<Work> {
  const looks: Work[] = [];
  const look = async () => {
    await clock.frames(60);
    looks.push(await take());
    const isStale = (await app.page.locator('.is-stale').count()) > 0;
    return !isStale && looks.slice(-3).every(({ calls }) => calls === 0);
  };
  await expect.poll(look, { timeout: PATIENCE_MS }).toBe(true);
  const sum = (kind: keyof Work) => looks.reduce((total, done) => total + done[kind], 0);
  return {
    calls: sum('calls'),
    domWrites: sum('domWrites'),
    layouts: sum('layouts'),
    saves: sum('saves'),
    jobs: sum('jobs'),
  };
}

/** Each count at most as given, and something done at all. */
function expectAtMost(done: Work, most: Work, times = 1): void {
  expect(done.calls).toBeGreaterThan(0);
  const over = Object.entries(most).filter(
    ([kind, count]) => done[kind as keyof Work] > times * count,
  );
  expect({ done, over }).toEqual({ done, over: [] });
}

async function openDistance(): Promise<void> {
  app = await openApp({ isStored: true });
  await untilAssessed(app.page);
  await openTile(app.page, 'distance');
}

it('solves and draws once a move of a slider, asks no worker, and saves nothing', async () => {
  await openDistance();
  const middle = await middleOf('input[type=range]');
  const at = (move: number) => ({ x: middle.x + 120 * Math.sin((move + 5) / 9), y: middle.y });
  const { moved, letGo } = await drag(middle, at);
  expectAtMost(
    moved,
    { calls: 4_780, domWrites: 38.2, layouts: LAYOUTS, saves: 0, jobs: 0 },
    MOVES,
  );
  // The room for error is asked for once, as is what allowing for nothing would do; all is saved.
  expectAtMost(letGo, { calls: 24_600, domWrites: 56, layouts: 5, saves: 3, jobs: 1 });
});

it.each([
  ['the ghost ball', '.shooter-diagram .ghost-ball', { calls: 3_520, domWrites: 33.6 }],
  ['the tip', '.near-tip', { calls: 1_490, domWrites: 9.7 }],
  ['the run', '.run-row .drag-handle', { calls: 1_990, domWrites: 5.9 }],
] as const)(
  'solves and draws once a move of %s on the picture, and saves nothing',
  async (_, held, most) => {
    app = await openApp({ isStored: true });
    await untilAssessed(app.page);
    const from = await middleOf(held);
    const at = (move: number) => ({ x: from.x + 24 * Math.sin((move + 5) / 9), y: from.y });
    const { moved, letGo } = await drag(from, at);
    expectAtMost(moved, { ...most, layouts: LAYOUTS, saves: 0, jobs: 0 }, MOVES);
    expectAtMost(letGo, { calls: 24_600, domWrites: 56, layouts: 5, saves: 3, jobs: 1 });
  },
);

it('works out no more than the shot a move of the ball to be played, and saves it once let go', async () => {
  app = await openApp({ isStored: true, hash: '#choose' });
  const middle = await pointOnTable(app.page, { up: 0.45, across: 0.5 });
  const at = (move: number) => ({
    x: middle.x + 64 * Math.cos(move / 12),
    // Near the rail, where the shot lies as the counts below were taken.
    y: middle.y - 56 + 42 * Math.sin(move / 12),
  });
  const { moved, letGo } = await drag(await middleOf('.board-ball.is-played .ball-body'), at);
  expectAtMost(moved, { calls: 2_980, domWrites: 9.5, layouts: LAYOUTS, saves: 0, jobs: 0 }, MOVES);
  // Each pocket is tried anew, and asked for once how often the ball goes in.
  expectAtMost(letGo, { calls: 165_000, domWrites: 13, layouts: 4, saves: 2, jobs: 1 });
});

it('solves and draws once a step of a held button, and asks the worker once it is let go', async () => {
  await openDistance();
  const { clock, take } = await pressAt(await middleOf('[aria-label="Farther"]'));
  const told = () => app.page.locator('[data-opens="distance"]').textContent();
  // By then the steps come as fast as they ever do, and go on short of where a warning says how far it is.
  await clock.frames(110);
  await take();
  const seen = new Set<string | null>();
  for (let frame = 0; frame < MOVES; frame++) {
    await clock.frames(1);
    seen.add(await told());
  }
  const held = await take();
  expect(seen.size).toBeGreaterThan(6);
  expectAtMost(
    held,
    { calls: 4_910, domWrites: 38.9, layouts: 1 + 1 / seen.size, saves: 0, jobs: 0 },
    seen.size,
  );
  await send('touchEnd');
  const letGo = await atRest(clock, take);
  expectAtMost(letGo, { calls: 24_600, domWrites: 56, layouts: 5, saves: 3, jobs: 1 });
});

it('starts, stored and without a server, with the last screen, and has nothing worked out', async () => {
  app = await openApp({ isStored: true });
  const { page, server } = app;
  await untilAssessed(page);
  await untilOfflineReady(page);
  // Else the next start saves what this visit could not.
  await untilKept(page, 'desk', { recentShots: [expect.anything()] });
  // Every later start finds a second copy, and looks whether it holds what is lost.
  await page.waitForFunction(() => localStorage.getItem('leeway.copy') !== null);
  await server.stop();
  const clock = await holdClock(page);
  const take = await countWork(page, server.origin);
  await page.reload();
  await page.locator('.answer-lead').waitFor();
  const started = await atRest(clock, take);
  expect(await page.locator('.why-certainty').first().textContent()).not.toBe('');
  // A start before there is a copy, which was counted at times, takes some 20,000 calls less.
  // Some 200 of the writes build the last screen anew, or say again what it says as it is taken over.
  expectAtMost(started, { calls: 64_200, domWrites: 303, layouts: 10, saves: 4, jobs: 0 });
});
