import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
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
}

/** A page visited once, in a profile of its own, whose server has gone. */
interface Stored {
  readonly url: string;
  readonly profile: string;
}

async function store(folder: string): Promise<Stored> {
  const profile = await mkdtemp(join(tmpdir(), 'cold-start-'));
  const { url, stop } = await startStaticServer({ folder });
  const context = await launchWithProfile(profile, true);
  try {
    // Twice: a browser keeps what it has compiled of a stored script from its first use on.
    for (let visit = 0; visit < 2; visit++) {
      const page = await context.newPage();
      await page.goto(url);
      await untilOfflineReady(page);
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
    new MutationObserver((_, observer) => {
      if (!document.querySelector('.answer')?.textContent) return;
      observer.disconnect();
      requestAnimationFrame(() => {
        const painted = new MessageChannel();
        painted.port1.onmessage = () => {
          window.readableMs = performance.now();
        };
        painted.port2.postMessage(null);
      });
    }).observe(document, { childList: true, subtree: true });
  });
}

async function start({ url, profile }: Stored): Promise<ColdStart> {
  const context = await launchWithProfile(profile, true);
  try {
    const page = await context.newPage();
    await noteReadable(page);
    const cdp = await context.newCDPSession(page);
    await cdp.send('Performance.enable', { timeDomain: 'threadTicks' });
    await page.goto(url, { waitUntil: 'commit' });
    await page.waitForFunction(() => window.readableMs > 0);
    const { metrics } = await cdp.send('Performance.getMetrics');
    const busyS = metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN;
    return { wallMs: await page.evaluate(() => window.readableMs), threadMs: 1000 * busyS };
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
  return { wallMs: compare('wallMs'), threadMs: compare('threadMs') };
}

/** How long the app, stored and without a server, takes to show its answer, over a bare page. */
export async function startBench(): Promise<readonly BenchLine[]> {
  const { wallMs, threadMs } = overBare(await coldStarts(15));
  return [
    { name: 'cold start to the answer, offline, median', value: wallMs.app, unit: 'ms' },
    { name: 'cold start over that of a bare page, median', value: wallMs.ratio, unit: '×' },
    { name: 'the page’s own work until then, median', value: threadMs.app, unit: 'ms' },
    { name: 'that work over that of a bare page, median', value: threadMs.ratio, unit: '×' },
  ];
}
