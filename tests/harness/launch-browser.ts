import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
} from 'playwright-core';
import { getChromium } from './get-chromium';

/** Without these a Chromium calls home, or will not start as root or in a small container. */
const ARGS = [
  '--no-sandbox',
  '--disable-dev-shm-usage',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--no-first-run',
];

/** A phone held upright: 390 by 844 CSS pixels at three device pixels each, with touch. */
export const PHONE: BrowserContextOptions = {
  viewport: { width: 390, height: 844 },
  deviceScaleFactor: 3,
  isMobile: true,
  hasTouch: true,
  serviceWorkers: 'allow',
};

/** A Chromium without a window. */
export async function launchBrowser(): Promise<Browser> {
  return chromium.launch({ executablePath: await getChromium(), args: ARGS });
}

/**
 * A Chromium that keeps what it stores in `profileFolder`, so that closing the context and
 * launching again is what a person does who closes the browser and comes back.
 */
export async function launchWithProfile(
  profileFolder: string,
  options: BrowserContextOptions = PHONE,
): Promise<BrowserContext> {
  return chromium.launchPersistentContext(profileFolder, {
    ...options,
    executablePath: await getChromium(),
    args: ARGS,
  });
}
