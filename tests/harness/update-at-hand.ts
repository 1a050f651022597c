import type { BrowserContext, Page } from 'playwright-core';
import { expect } from 'vitest';
import { untilFetched, untilRendered } from './open-app';
import { PATIENCE_MS } from './patience';
import { settle } from './read-shot';

/** What a newer version is taken with. */
export const updateButton = (page: Page) => page.getByRole('button', { name: 'Update now' });

/**
 * Takes it, once all of the page has come: Chromium lets a worker go only when it has nothing left to
 * answer, which a page that is left while it asks can put off for minutes.
 */
export async function takeUpdate(page: Page): Promise<void> {
  await untilFetched(page);
  await updateButton(page).click();
}

/** What the app itself does when it comes back into view. */
export const lookForUpdate = (page: Page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
  });

/**
 * Waits until no worker is coming or going any more: what could load the page anew has done so,
 * and the page so loaded has told of it (a script can be asked before `DOMContentLoaded`).
 * Works where there is none left, too.
 */
export async function untilNoWorkerComes(page: Pick<Page, 'evaluate'>): Promise<void> {
  const isOver = () =>
    page.evaluate(async () => {
      const registration = await navigator.serviceWorker.getRegistration();
      const { controller } = navigator.serviceWorker;
      if (document.readyState !== 'complete') return false;
      if (registration === undefined) return controller === null;
      const { installing, waiting, active } = registration;
      return installing === null && waiting === null && active === controller;
    });
  await expect.poll(() => isOver().catch(() => false), { timeout: PATIENCE_MS }).toBe(true);
  await settle(page);
}

/** Counts how often a page is loaded from now on; a change of its hash is no load. */
export function countLoads(page: Page): { readonly loads: number } {
  const counted = { loads: 0 };
  page.on('domcontentloaded', () => {
    counted.loads += 1;
  });
  return counted;
}

/** Another tab of the same browser, with the app open in it. */
export async function openTab(context: BrowserContext, url: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(url);
  await untilRendered(page);
  return page;
}

/** The scripts that the page starts, now or later: one of them differs between any two versions. */
export const versionOf = (page: Page) =>
  page.evaluate(() =>
    Array.from(
      document.querySelectorAll('script[src], link[as="script"]'),
      (one) => one.getAttribute('src') ?? one.getAttribute('href'),
    ).join(' '),
  );
