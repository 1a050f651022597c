import type { Page } from 'playwright-core';

/** More than any screen has to focus. */
const MOST_STOPS = 150;
/** Rings thinner than this do not count, px. */
const LEAST_RING_PX = 2;

interface Stop {
  readonly isKnown: boolean;
  readonly fault: string | null;
}

/** Notes the stop the focus is at, and what is wrong with it: no ring, or hidden under something. */
async function stopHere(page: Page): Promise<Stop> {
  return page.evaluate((leastRingPx) => {
    const kept = window as { stops?: Set<Element> };
    kept.stops ??= new Set();
    const seen = kept.stops;
    const at = document.activeElement;
    if (!(at instanceof HTMLElement) || at === document.body) {
      return { isKnown: false, fault: null };
    }
    const isKnown = seen.has(at);
    seen.add(at);
    const { left, top, width, height } = at.getBoundingClientRect();
    const ends = [0.1, 0.5, 0.9];
    const isCovered = ends.every((share) => {
      const over = document.elementFromPoint(left + width * share, top + height * share);
      return !at.contains(over);
    });
    const { outlineStyle, outlineWidth } = getComputedStyle(at);
    const hasRing = outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= leastRingPx;
    const name = at.outerHTML.slice(0, 100);
    const fault = isCovered ? 'hidden' : hasRing ? null : 'without a ring';
    return { isKnown, fault: fault && `${fault}: ${name}` };
  }, LEAST_RING_PX);
}

/** Whatever can be used and the focus never came to. */
async function neverReached(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const seen = (window as { stops?: Set<Element> }).stops ?? new Set();
    const wanted = 'button, a[href], input, select, textarea, summary, [role="slider"]';
    const faults: string[] = [];
    for (const element of document.querySelectorAll<HTMLElement>(wanted)) {
      const isUsable = element.checkVisibility() && !element.matches(':disabled');
      if (isUsable && !seen.has(element))
        faults.push(`never reached: ${element.outerHTML.slice(0, 100)}`);
    }
    return faults;
  });
}

/**
 * Presses Tab until the focus has been everywhere and comes round again. Finds stops that show no
 * ring or lie hidden, and things to use that Tab never comes to, be it for a trap on the way.
 */
export async function focusFaults(page: Page): Promise<string[]> {
  await page.evaluate(() => {
    delete (window as { stops?: Set<Element> }).stops;
  });
  const faults: string[] = [];
  for (let stops = 0; ; stops++) {
    if (stops === MOST_STOPS) return [...faults, 'the focus never came round'];
    await page.keyboard.press('Tab');
    const { isKnown, fault } = await stopHere(page);
    if (isKnown) break;
    if (fault) faults.push(fault);
  }
  return [...faults, ...(await neverReached(page))];
}
