import type { Page } from 'playwright-core';
import { settle } from './read-shot';

/** Looks at the page with text twice as large; then all is as it was. */
export async function withLargeText(page: Page, look: () => Promise<void>): Promise<void> {
  const setSize = (size: string) =>
    page.evaluate((to) => document.documentElement.style.setProperty('font-size', to), size);
  await setSize('200%');
  await settle(page);
  await look();
  await setSize('');
  await settle(page);
}

/** As far as a reader may ask for letters, words and lines to be spread (WCAG 1.4.12). */
const SPREAD =
  '#app *:not(svg, svg *) { letter-spacing: 0.12em !important; word-spacing: 0.16em !important; line-height: 1.5 !important; }';

/** Looks at the page with its text spread out; then all is as it was. */
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
  await settle(page);
}
