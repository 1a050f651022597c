import type { Page } from 'playwright-core';
import { settle } from './read-shot';
import { SIZES } from './screens';
import { THUMB_PX } from './thumb';

/** Text or controls that reach beyond the sides of the screen, and whether the page scrolls so. */
export async function sidewaysFaults(page: Pick<Page, 'evaluate'>): Promise<string[]> {
  return page.evaluate(() => {
    const faults: string[] = [];
    const { scrollWidth } = document.documentElement;
    if (scrollWidth > innerWidth) faults.push(`the page is ${scrollWidth} px wide`);
    for (const element of document.querySelectorAll('#app *:not(svg *)')) {
      const { left, right, width } = element.getBoundingClientRect();
      const isHidden = element.closest('.visually-hidden') !== null || width === 0;
      if (!isHidden && (left < -0.5 || right > innerWidth + 0.5)) {
        faults.push(`${element.tagName}.${element.className} spans ${left} to ${right}`);
      }
    }
    return faults;
  });
}

/** Text that a box too small for it cuts off; what can be scrolled to downwards is not cut off. */
export async function cutOffText(page: Pick<Page, 'evaluate'>): Promise<string[]> {
  return page.evaluate(() => {
    const faults: string[] = [];
    for (const element of document.querySelectorAll<HTMLElement>('#app *:not(svg *)')) {
      if (element.matches('.visually-hidden, [type="range"]')) continue;
      const { overflowX, overflowY } = getComputedStyle(element);
      const within = document.createRange();
      within.selectNodeContents(element);
      // WebKit counts the padding behind what reaches into it.
      const reachesOut =
        within.getBoundingClientRect().right > element.getBoundingClientRect().right + 1;
      const scrollsAcross = overflowX === 'auto' || overflowX === 'scroll';
      const isTooWide =
        element.scrollWidth > element.clientWidth + 1 && (reachesOut || scrollsAcross);
      const isTooHigh = element.scrollHeight > element.clientHeight + 1;
      const cutsAcross = isTooWide && overflowX !== 'visible';
      const cutsDown = isTooHigh && (overflowY === 'hidden' || overflowY === 'clip');
      if (cutsAcross || cutsDown) faults.push(`${element.tagName}.${element.className}`);
    }
    return faults;
  });
}

/** Everything that can be pressed. */
const TARGETS = 'button, a[href], input, select, textarea, summary, [role="slider"]';

/** Everything to press that is smaller than a thumb, or than `leastPx`. */
export async function smallTargets(
  page: Pick<Page, 'evaluate'>,
  targets = TARGETS,
  leastPx = THUMB_PX,
): Promise<string[]> {
  return page.evaluate(
    ({ wanted, least }) => {
      const faults: string[] = [];
      for (const element of document.querySelectorAll(wanted)) {
        const { width, height } = element.getBoundingClientRect();
        if (width === 0 && height === 0) continue;
        if (width < least - 0.01 || height < least - 0.01) {
          faults.push(`${element.outerHTML.slice(0, 90)}: ${width} by ${height}`);
        }
      }
      return faults;
    },
    { wanted: targets, least: leastPx },
  );
}

/** Of the given elements, those that cannot be wholly seen without scrolling. */
export async function outOfSight(
  page: Pick<Page, 'evaluate'>,
  selectors: readonly string[],
): Promise<string[]> {
  return page.evaluate((wanted) => {
    return wanted.filter((selector) => {
      const box = document.querySelector(selector)?.getBoundingClientRect();
      return !box || box.height === 0 || box.top < -0.5 || box.bottom > innerHeight + 0.5;
    });
  }, selectors);
}

/** What ends under the way between the places however far its place is scrolled. */
export async function endsUnderNavigation(page: Pick<Page, 'evaluate'>): Promise<string[]> {
  return page.evaluate(() => {
    const faults: string[] = [];
    const { scrollHeight } = document.documentElement;
    if (scrollHeight > innerHeight + 1) faults.push(`the page is ${scrollHeight} px high`);
    const place = document.querySelector('main');
    const bar = document.querySelector('.nav-bar')?.getBoundingClientRect();
    // A low screen gives it up while a control is open.
    const top = bar?.height ? bar.top : innerHeight;
    if (place === null) return ['there is no place'];
    place.scrollTop = place.scrollHeight;
    for (const element of place.children) {
      const { bottom } = element.getBoundingClientRect();
      if (bottom > top + 0.5) faults.push(`${element.className} ends at ${bottom} of ${top}`);
    }
    place.scrollTop = 0;
    return faults;
  });
}

/** What is cut off, too small for a thumb or wider than the screen, at every size. */
export async function faultsAtAllSizes(page: Page): Promise<string[]> {
  const faults: string[] = [];
  for (const size of SIZES) {
    await page.setViewportSize(size);
    await settle(page);
    const found = [
      ...(await sidewaysFaults(page)),
      ...(await cutOffText(page)),
      ...(await smallTargets(page)),
    ];
    faults.push(...found.map((fault) => `${size.width}: ${fault}`));
  }
  return faults;
}
