import axe, { type AxeResults, type RunOnly } from 'axe-core';
import type { Page } from 'playwright-core';

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'];

interface WithAxe {
  readonly axe: { run(context: Document, options: unknown): Promise<AxeResults> };
}

export interface AxeReport {
  /** One line for each thing found. */
  readonly found: readonly string[];
  /** How many rules had something to look at and were content. */
  readonly rulesPassed: number;
}

/** Looks for WCAG A and AA faults, up to 2.2, on the page as it stands. */
export function runAxe(page: Page): Promise<AxeReport> {
  return run(page, { type: 'tag', values: TAGS });
}

/** Looks only for what another theme may spoil: the contrast of text. */
export function runAxeOnColours(page: Page): Promise<AxeReport> {
  return run(page, { type: 'rule', values: ['color-contrast'] });
}

/** Looks only for what larger text may spoil: its contrast, what scrolls then, what a thumb hits. */
export function runAxeOnSizes(page: Page): Promise<AxeReport> {
  const values = ['color-contrast', 'scrollable-region-focusable', 'target-size'];
  return run(page, { type: 'rule', values });
}

async function run(page: Page, runOnly: RunOnly): Promise<AxeReport> {
  // Evaluated by the debugger, which the page's content security policy does not bind.
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe.source);
  const { violations, passes } = await page.evaluate(
    (options) => (window as unknown as WithAxe).axe.run(document, options),
    // Of what passes the rules alone are told, not each element: they are many.
    { runOnly, resultTypes: ['violations'] },
  );
  return {
    found: violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`)),
    rulesPassed: passes.length,
  };
}
