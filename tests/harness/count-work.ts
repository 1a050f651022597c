import type { CDPSession, Page } from 'playwright-core';

/** What a page did in a stretch, in counts: the same on any machine, however slow or busy. */
export interface Work extends Seen {
  /** Calls of the app's own functions on the page's thread: what is solved, rendered, looked up. */
  readonly calls: number;
  readonly layouts: number;
}

/** The part that is seen from within. */
interface Seen {
  /** Records of a MutationObserver over the whole document. */
  readonly domWrites: number;
  /** Rows put, deleted or cleared in IndexedDB, and items of `localStorage` set or removed. */
  readonly saves: number;
  /** Messages to workers. */
  readonly jobs: number;
}

declare global {
  interface Window {
    /** `isFresh`: nobody looked at this document before. */
    takeWork(): Seen & { readonly isFresh: boolean };
  }
}

/**
 * Counts from now on what a page does, and from the beginning for each document that it loads.
 *
 * @param origin where the app's own scripts come from
 * @returns what was done since the last look
 */
export async function countWork(page: Page, origin: string): Promise<() => Promise<Work>> {
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Performance.enable');
  await devtools.send('Profiler.enable');
  await devtools.send('Profiler.startPreciseCoverage', { callCount: true, detailed: false });
  await page.addInitScript(watchWork);
  await page.evaluate(watchWork);
  let layoutsBefore = 0;
  const take = async () => {
    const { isFresh, ...seen } = await page.evaluate(() => window.takeWork());
    const layouts = await layoutsOf(devtools);
    const work = {
      ...seen,
      calls: await callsOf(devtools, origin),
      layouts: isFresh ? layouts : layouts - layoutsBefore,
    };
    layoutsBefore = layouts;
    return work;
  };
  await take();
  return take;
}

/** Runs in the page. */
function watchWork(): void {
  const none = { domWrites: 0, saves: 0, jobs: 0 };
  const seen = { ...none };
  let isFresh = true;
  const observer = new MutationObserver((records) => {
    seen.domWrites += records.length;
  });
  const all = { subtree: true, childList: true, attributes: true, characterData: true };
  observer.observe(document, all);
  const count = (kind: keyof typeof seen, prototype: object, names: readonly string[]) => {
    for (const name of names) {
      const does = Reflect.get(prototype, name);
      Reflect.set(prototype, name, function (this: unknown, ...given: unknown[]) {
        seen[kind] += 1;
        return Reflect.apply(does, this, given);
      });
    }
  };
  count('saves', IDBObjectStore.prototype, ['put', 'add', 'delete', 'clear']);
  count('saves', Storage.prototype, ['setItem', 'removeItem']);
  count('jobs', Worker.prototype, ['postMessage']);
  window.takeWork = () => {
    seen.domWrites += observer.takeRecords().length;
    const taken = { ...seen, isFresh };
    isFresh = false;
    Object.assign(seen, none);
    return taken;
  };
}

async function callsOf(devtools: CDPSession, origin: string): Promise<number> {
  const { result } = await devtools.send('Profiler.takePreciseCoverage');
  return result
    .filter(({ url }) => url.startsWith(origin))
    .flatMap(({ functions }) => functions.map(({ ranges }) => ranges[0]?.count ?? 0))
    .reduce((sum, count) => sum + count, 0);
}

async function layoutsOf(devtools: CDPSession): Promise<number> {
  const { metrics } = await devtools.send('Performance.getMetrics');
  return metrics.find(({ name }) => name === 'LayoutCount')?.value ?? Number.NaN;
}
