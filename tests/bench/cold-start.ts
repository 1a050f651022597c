import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { CDPSession, Page } from 'playwright-core';
import { launchWithProfile } from '../harness/launch-browser';
import { untilOfflineReady } from '../harness/open-app';
import { median } from '../harness/quantile';
import { startStaticServer } from '../harness/static-server';
import { buildBarePage } from './bare-page/build';
import type { BenchLine } from './bench-line';

declare global {
  interface Window {
    readableMs: number;
  }
}

/** One start of a stored page in a browser just started, without a server. */
interface ColdStart {
  /** From the navigation to the frame that shows the answer. */
  readonly wallMs: number;
  /** What the page's own thread has worked by then, which other work on the machine does not lengthen. */
  readonly threadMs: number;
  /** The same once a finger is answered too: as the last screen, shown first, is taken over. */
  readonly takenOverMs: number;
}

/** A page visited once, in a profile of its own, whose server has gone. */
interface Stored {
  readonly url: string;
  readonly profile: string;
}

const VISIT_MS = 3000;

async function store(folder: string): Promise<Stored> {
  const profile = await mkdtemp(join(tmpdir(), 'cold-start-'));
  const { url, stop } = await startStaticServer({ folder });
  const context = await launchWithProfile(profile, true);
  try {
    // Thrice: a browser keeps what it has compiled of a stored script from its first use on.
    for (let visit = 0; visit < 3; visit++) {
      const page = await context.newPage();
      await page.goto(url);
      await untilOfflineReady(page);
      // Looked at for a moment, and left as a page is left: a browser that is shut tells no page so.
      await page.waitForTimeout(VISIT_MS);
      await page.goto('about:blank');
    }
  } finally {
    await context.close();
    await stop();
  }
  return { url, profile };
}

/**
 * From now on each document notes when the frame that shows the answer is out. What it leaves for when
 * it is idle waits for good: how much of that is done before it is asked for its work is chance.
 */
async function noteReadable(page: Page): Promise<void> {
  await page.addInitScript(() => {
    window.requestIdleCallback = () => 0;
    // The app names the place in the title once what it has drawn answers a finger.
    new MutationObserver((_, observer) => {
      if (!document.title.startsWith('Shot')) return;
      observer.disconnect();
      performance.mark('answering');
    }).observe(document, { childList: true, subtree: true });
    new MutationObserver((_, observer) => {
      if (!document.querySelector('.answer')?.textContent) return;
      observer.disconnect();
      requestAnimationFrame(() => {
        const painted = new MessageChannel();
        painted.port1.onmessage = () => {
          performance.mark('readable');
          window.readableMs = performance.now();
        };
        painted.port2.postMessage(null);
      });
    }).observe(document, { childList: true, subtree: true });
  });
}

/** A task of a thread, or a mark, as Chromium traces it; µs. */
interface Traced {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  readonly ts: number;
  /** Of the thread's own work. */
  readonly tdur?: number;
}

/** Traces tasks until asked for them. */
async function traceTasks(cdp: CDPSession): Promise<() => Promise<readonly Traced[]>> {
  const traced: Traced[] = [];
  cdp.on('Tracing.dataCollected', ({ value }) => traced.push(...(value as unknown as Traced[])));
  const includedCategories = ['toplevel', 'blink.user_timing'];
  await cdp.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { includedCategories },
  });
  return async () => {
    const isOver = new Promise((resolve) => cdp.once('Tracing.tracingComplete', resolve));
    await cdp.send('Tracing.end');
    await isOver;
    return traced;
  };
}

/** What the thread of a mark had worked by then, ms. */
function workUntil(name: string, traced: readonly Traced[]): number {
  const mark = traced.find((one) => one.name === name);
  if (!mark) return Number.NaN;
  const own = traced.filter(({ pid, tid }) => pid === mark.pid && tid === mark.tid);
  const tasks = own.filter(({ name, ts }) => name.endsWith('RunTask') && ts < mark.ts);
  return tasks.reduce((sum, { tdur = 0 }) => sum + tdur, 0) / 1000;
}

async function start({ url, profile }: Stored): Promise<ColdStart> {
  const context = await launchWithProfile(profile, true);
  try {
    const page = await context.newPage();
    await noteReadable(page);
    const cdp = await context.newCDPSession(page);
    const endTrace = await traceTasks(cdp);
    await page.goto(url, { waitUntil: 'commit' });
    await page.waitForFunction(() => window.readableMs > 0);
    const isBare = (await page.title()) === 'Bare page';
    if (!isBare) await page.waitForFunction(() => document.title.startsWith('Shot'));
    const traced = await endTrace();
    return {
      wallMs: await page.evaluate(() => window.readableMs),
      threadMs: workUntil('readable', traced),
      takenOverMs: workUntil(isBare ? 'readable' : 'answering', traced),
    };
  } finally {
    await context.close();
  }
}

/** Starts of the built app and of the bare page in turns, so that both meet the same machine. */
async function coldStarts(rounds: number) {
  const bareFolder = await buildBarePage();
  const [app, bare] = [await store('dist'), await store(bareFolder)];
  const starts: { readonly app: ColdStart; readonly bare: ColdStart }[] = [];
  try {
    for (let round = 0; round < rounds; round++) {
      starts.push({ app: await start(app), bare: await start(bare) });
    }
  } finally {
    for (const folder of [bareFolder, app.profile, bare.profile]) {
      await rm(folder, { recursive: true, force: true, maxRetries: 5 });
    }
  }
  return starts;
}

/** The median of either, and how many times that of the bare page that of the app is. */
function overBare(starts: Awaited<ReturnType<typeof coldStarts>>) {
  const compare = (of: keyof ColdStart) => {
    const app = median(starts.map((start) => start.app[of]));
    return { app, ratio: app / median(starts.map((start) => start.bare[of])) };
  };
  return {
    wallMs: compare('wallMs'),
    threadMs: compare('threadMs'),
    takenOverMs: compare('takenOverMs'),
  };
}

/** How long the app, stored and without a server, takes to show its answer, over a bare page. */
export async function startBench(): Promise<readonly BenchLine[]> {
  const { wallMs, threadMs, takenOverMs } = overBare(await coldStarts(15));
  return [
    { name: 'cold start to the answer, offline, median', value: wallMs.app, unit: 'ms' },
    { name: 'cold start over that of a bare page, median', value: wallMs.ratio, unit: '×' },
    { name: 'the page’s own work until then, median', value: threadMs.app, unit: 'ms' },
    { name: 'that work over that of a bare page, median', value: threadMs.ratio, unit: '×' },
    { name: 'work until a finger is answered, median', value: takenOverMs.app, unit: 'ms' },
    { name: 'that over a bare page, median', value: takenOverMs.ratio, unit: '×' },
  ];
}
