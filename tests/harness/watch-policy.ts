import type { Page } from 'playwright-core';

/**
 * Notes from now on what the page's content security policy refuses, until the page is loaded anew.
 *
 * @returns reads the notes: the directive and what went against it.
 */
export async function watchPolicy(page: Page): Promise<() => Promise<string[]>> {
  const notes = await page.evaluateHandle(() => {
    const broken: string[] = [];
    document.addEventListener('securitypolicyviolation', (event) => {
      broken.push(`${event.effectiveDirective} ${event.blockedURI}`);
    });
    return broken;
  });
  return () => notes.jsonValue();
}
