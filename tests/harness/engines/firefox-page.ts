import { rmSync } from 'node:fs';
import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page as PlaywrightPage } from 'playwright-core';
import puppeteer, { type Browser, type BrowserContext, type Page } from 'puppeteer-core';
import { enginesFetched } from '../engines-fetched';
import { type EnginePage, PHONE_SIZE } from './engine-page';
import { findFirefox } from './get-engines';

const LONG_MS = 600_000;

/**
 * The Firefox that all tests of this process open a page of their own in; starting one takes longer
 * than most of them do. It ends with the process.
 */
interface RunningFirefox {
  readonly browser: Browser;
  readonly downloads: string;
}
let running: Promise<RunningFirefox> | undefined;

async function launchFirefox(): Promise<RunningFirefox> {
  await enginesFetched();
  const downloads = await mkdtemp(join(tmpdir(), 'leeway-firefox-'));
  process.once('exit', () => rmSync(downloads, { recursive: true, force: true }));
  const browser = await puppeteer.launch({
    browser: 'firefox',
    executablePath: await findFirefox(),
    headless: true,
    extraPrefsFirefox: {
      'dom.w3c_touch_events.enabled': 1,
      // A busy machine may take long between a finger's touch and its leaving: it is a tap all the same.
      'apz.max_tap_time': LONG_MS,
      'ui.click_hold_context_menus.delay': LONG_MS,
      'browser.download.folderList': 2,
      'browser.download.dir': downloads,
    },
  });
  browser.once('disconnected', () => {
    running = undefined;
  });
  return { browser, downloads };
}

/** A page that shares nothing with others, empty of any data, at a phone's size and with touch. */
export async function openFirefox(): Promise<EnginePage> {
  running ??= launchFirefox();
  const { browser, downloads } = await running;
  const context = await browser.createBrowserContext();
  const page = await context.newPage();
  await page.setViewport(PHONE_SIZE);
  return firefoxPage(context, page, downloads);
}

/**
 * Firefox tells of a worker's script that a document was still fetching as it was left, at times
 * without its name. Of a document that stays, the answer would not come.
 */
const OF_A_DOCUMENT_LEFT = /Failed to load .*A ServiceWorker intercepted the request/;

function firefoxPage(context: BrowserContext, page: Page, downloads: string): EnginePage {
  const problems = watch(page);
  const open = async (url: string) => {
    await page.goto('about:blank');
    await page.goto(url);
  };
  return {
    engine: 'Firefox',
    downloads,
    open,
    openNarrow: open,
    reload: async () => {
      await page.reload();
    },
    evaluate: ((work: () => unknown, arg: unknown) =>
      page.evaluate(work as (arg: unknown) => unknown, arg)) as PlaywrightPage['evaluate'],
    tapAt: (x, y) => page.touchscreen.tap(x, y),
    typeOver: async (text) => {
      await page.keyboard.down('Control');
      await page.keyboard.press('a');
      await page.keyboard.up('Control');
      await page.keyboard.type(text);
    },
    pickFile: async (path, tap) => {
      const [chooser] = await Promise.all([page.waitForFileChooser(), tap()]);
      await chooser.accept([path]);
    },
    screenshot: async () => Buffer.from(await page.screenshot()),
    problems: async () => problems.filter((problem) => !OF_A_DOCUMENT_LEFT.test(problem)),
    close: () => context.close(),
  };
}

/** Firefox tells of a broken content security policy as of an uncaught exception. */
function watch(page: Page): string[] {
  const problems: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') problems.push(`console error: ${message.text()}`);
  });
  page.on('pageerror', (error) => {
    problems.push(`uncaught: ${error instanceof Error ? error.message : String(error)}`);
  });
  return problems;
}
