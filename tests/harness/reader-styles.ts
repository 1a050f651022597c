import type { Page } from 'playwright-core';
import { settle } from './read-shot';

/*
 * Each lets the page draw itself the new way, looks, and takes the style off again. Who looks at the
 * page as it was waits for that: mostly it goes elsewhere, and no frame of it would be seen.
 */

/** Looks at the page with text twice as large. */
export async function withLargeText(page: Page, look: () => Promise<void>): Promise<void> {
  await page.evaluate(() => document.documentElement.style.setProperty('font-size', '200%'));
  await settle(page);
  await look();
  await page.evaluate(() => document.documentElement.style.removeProperty('font-size'));
}

/** As far as a reader may ask for letters, words and lines to be spread (WCAG 1.4.12). */
const SPREAD =
  '#app *:not(svg, svg *) { letter-spacing: 0.12em !important; word-spacing: 0.16em !important; line-height: 1.5 !important; }';

/** Looks at the page with its text spread out. */
export async function withSpreadText(page: Page, look: () => Promise<void>): Promise<void> {
  // A sheet made by script is not bound by the page's content security policy.
  await page.evaluate((css) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(css);
    document.adoptedStyleSheets = [sheet];
  }, SPREAD);
  await settle(page);
  await look();
  await page.evaluate(() => {
    document.adoptedStyleSheets = [];
  });
}
