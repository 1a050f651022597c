import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { type ContextGuard, guardContext } from './guard-context';
import { PHONE, sharedBrowser } from './launch-browser';
import { PATIENCE_MS } from './patience';
import { type StaticServer, startStaticServer } from './static-server';

export interface OpenAppOptions {
  /** The build to serve; left out, the present one. */
  readonly folder?: string;
  /** Where on the host the app lies; begins and ends with a slash. */
  readonly basePath?: string;
  /** What follows the base path, such as `#kit`. */
  readonly hash?: string;
  /** Laid over {@link PHONE}. */
  readonly context?: BrowserContextOptions;
  /**
   * Whether the browser has service workers and stores the app, which costs as much as opening it
   * does. Left out, it is as one whose owner forbids them.
   */
  readonly isStored?: boolean;
  /**
   * Whether the browser has workers, in which the room for error and what readings tell are worked
   * out at every load: that costs as much again. Left out, it has.
   */
  readonly hasWorkers?: boolean;
}

export interface OpenApp {
  readonly server: StaticServer;
  readonly browser: Browser;
  readonly context: BrowserContext;
  readonly page: Page;
  readonly guard: ContextGuard;
  close(): Promise<void>;
}

/** Serves the built app on a free port and opens it in a fresh phone, empty of any data. */
export async function openApp(options: OpenAppOptions = {}): Promise<OpenApp> {
  const { folder = 'dist', basePath = '/', hash = '', context: over = {} } = options;
  const { isStored = false, hasWorkers = true } = options;
  const server = await startStaticServer({ folder, basePath });
  const browser = await sharedBrowser();
  const context = await browser.newContext({ ...PHONE, ...over });
  context.setDefaultTimeout(PATIENCE_MS);
  const guard = guardContext(context, server.origin);
  if (!isStored) await context.addInitScript(withoutServiceWorkers);
  if (!hasWorkers) await context.addInitScript(withoutWorkers);
  const page = await context.newPage();
  await page.goto(server.url + hash);
  await untilRendered(page);
  return {
    server,
    browser,
    context,
    page,
    guard,
    close: async () => {
      await context.close();
      await server.stop();
    },
  };
}

function withoutServiceWorkers(): void {
  Reflect.deleteProperty(Navigator.prototype, 'serviceWorker');
}

function withoutWorkers(): void {
  Reflect.deleteProperty(window, 'Worker');
}

/** Waits until the app has put something to read on the page, and nothing of it is still to come. */
export async function untilRendered(page: Page): Promise<void> {
  await page.waitForFunction(
    () =>
      (document.querySelector('#app')?.textContent ?? '').trim() !== '' &&
      document.querySelector('.late-part') === null,
  );
}

/** Waits until the page would open again without a network. */
export async function untilOfflineReady(page: Page): Promise<void> {
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
}

/** Waits until every part has come that comes later than the first answer: this is the last. */
export async function untilFetched(page: Page): Promise<void> {
  await page.waitForFunction(() =>
    performance.getEntriesByType('resource').some(({ name }) => name.includes('/late-')),
  );
}
