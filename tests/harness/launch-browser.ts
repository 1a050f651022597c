import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
} from 'playwright-core';
import { getChromium, getHeadlessShell } from './get-chromium';
import { PATIENCE_MS } from './patience';

/** Without these a Chromium calls home, or will not start as root or in a small container. */
const ARGS = [
  '--no-sandbox',
  '--disable-dev-shm-usage',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--no-first-run',
];

/**
 * A phone held upright: 390 by 844 CSS pixels, with touch. A device pixel for each is enough for
 * whatever is not looked at by eye, and paints in a ninth of the work of a phone's three.
 */
export const PHONE: BrowserContextOptions = {
  viewport: { width: 390, height: 844 },
  deviceScaleFactor: 1,
  isMobile: true,
  hasTouch: true,
  serviceWorkers: 'allow',
};

/** A Chromium without a window. */
export async function launchBrowser(): Promise<Browser> {
  return chromium.launch({ executablePath: await getHeadlessShell(), args: ARGS });
}

let running: Promise<Browser> | undefined;

/**
 * The Chromium that all tests of this process open a context of their own in, which shares nothing
 * with other contexts. It ends with the process, and is launched anew should it have crashed.
 */
export function sharedBrowser(): Promise<Browser> {
  running ??= launchBrowser().then((browser) => {
    browser.once('disconnected', () => {
      running = undefined;
    });
    return browser;
  });
  return running;
}

/**
 * A Chromium that keeps what it stores in `profileFolder`, so that closing the context and
 * launching again is what a person does who closes the browser and comes back.
 *
 * @param isWhole whether the shell will not do: it installs no apps
 */
export async function launchWithProfile(
  profileFolder: string,
  isWhole = false,
): Promise<BrowserContext> {
  const context = await chromium.launchPersistentContext(profileFolder, {
    ...PHONE,
    executablePath: await (isWhole ? getChromium() : getHeadlessShell()),
    args: ARGS,
  });
  context.setDefaultTimeout(PATIENCE_MS);
  return context;
}
