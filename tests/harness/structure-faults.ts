import type { Page } from 'playwright-core';

/** Landmarks, headings, names of drawings, the page's language and title, and whether it zooms. */
export async function structureFaults(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const faults: string[] = [];
    const expectOne = (selector: string) => {
      const found = document.querySelectorAll(selector).length;
      if (found !== 1) faults.push(`${found} of ${selector}`);
    };
    expectOne('h1');
    expectOne('main');
    expectOne('main h1');
    expectOne('nav[aria-label]');
    expectOne('nav [aria-current="page"]');
    for (const svg of document.querySelectorAll('svg')) {
      const isTold = svg.role === 'img' && (svg.ariaLabel ?? '').length > 20;
      if (!isTold && svg.ariaHidden !== 'true')
        faults.push(`a drawing says nothing: ${svg.outerHTML}`);
    }
    if (document.documentElement.lang !== 'en') faults.push('the page tells no language');
    if (!/\w, Leeway$/.test(document.title)) faults.push(`the title is ${document.title}`);
    const viewport = document.querySelector('meta[name="viewport"]')?.getAttribute('content') ?? '';
    if (/user-scalable|maximum-scale/.test(viewport)) faults.push('the page does not zoom');
    return faults;
  });
}

/** Whatever moves by itself, or would, for whoever asks that nothing does. */
export async function motionFaults(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const moving = document.getAnimations().map(() => 'an animation runs');
    for (const element of document.querySelectorAll('#app, #app *')) {
      const { transitionDuration, animationName, scrollBehavior } = getComputedStyle(element);
      const isStill = /^(0s(, )?)+$/.test(transitionDuration) && animationName === 'none';
      if (!isStill || scrollBehavior === 'smooth') moving.push(element.outerHTML.slice(0, 80));
    }
    return moving;
  });
}
