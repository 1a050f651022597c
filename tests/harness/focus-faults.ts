import type { Page } from 'playwright-core';

/** More than any screen has to focus. */
const MOST_STOPS = 150;
/** Pressed before it is asked whether the focus came round: asking costs as much as a stop. */
const AT_ONCE = 15;
/** Rings thinner than this do not count, px. */
const LEAST_RING_PX = 2;

/** What the focus came to so far. */
interface Tour {
  readonly stops: Set<Element>;
  readonly faults: string[];
  isRound: boolean;
}

/**
 * From now on whatever a Tab comes to is noted as the key is let go, and what is wrong with it: no
 * ring, or hidden under something. Once it is where it was before, Tab does nothing more.
 */
async function beginTour(page: Page): Promise<void> {
  await page.evaluate((leastRingPx) => {
    const tour: Tour = { stops: new Set(), faults: [], isRound: false };
    (window as { tour?: Tour }).tour = tour;
    const faultOf = (at: Element) => {
      const { left, top, width, height } = at.getBoundingClientRect();
      const isCovered = [0.1, 0.5, 0.9].every((share) => {
        const over = document.elementFromPoint(left + width * share, top + height * share);
        return !at.contains(over);
      });
      if (isCovered) return 'hidden';
      const { outlineStyle, outlineWidth } = getComputedStyle(at);
      const hasRing = outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= leastRingPx;
      return hasRing ? null : 'without a ring';
    };
    const note = () => {
      const at = document.activeElement;
      if (tour.isRound || !(at instanceof HTMLElement) || at === document.body) return;
      tour.isRound = tour.stops.has(at);
      const fault = tour.isRound ? null : faultOf(at);
      if (fault) tour.faults.push(`${fault}: ${at.outerHTML.slice(0, 100)}`);
      tour.stops.add(at);
    };
    const over = new AbortController();
    const options = { capture: true, signal: over.signal };
    const stay = (event: Event) => tour.isRound && event.preventDefault();
    document.addEventListener('keydown', stay, options);
    document.addEventListener('keyup', note, options);
    document.addEventListener('tour-over', () => over.abort(), { once: true });
  }, LEAST_RING_PX);
}

const isRound = (page: Page) =>
  page.evaluate(() => (window as { tour?: Tour }).tour?.isRound === true);

/** What was wrong on the way, and whatever can be used and the focus never came to. */
async function endTour(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    document.dispatchEvent(new Event('tour-over'));
    const { stops, faults } = (window as { tour?: Tour }).tour ?? { stops: new Set(), faults: [] };
    const wanted = 'button, a[href], input, select, textarea, summary, [role="slider"]';
    const missed = [...document.querySelectorAll<HTMLElement>(wanted)].filter(
      (element) =>
        element.checkVisibility() && !element.matches(':disabled') && !stops.has(element),
    );
    return [
      ...faults,
      ...missed.map(({ outerHTML }) => `never reached: ${outerHTML.slice(0, 100)}`),
    ];
  });
}

/**
 * Presses Tab until the focus has been everywhere and comes round again. Finds stops that show no
 * ring or lie hidden, and things to use that Tab never comes to, be it for a trap on the way.
 */
export async function focusFaults(page: Page): Promise<string[]> {
  const devtools = await page.context().newCDPSession(page);
  const tab = { key: 'Tab', code: 'Tab', windowsVirtualKeyCode: 9 };
  const press = (type: 'rawKeyDown' | 'keyUp') =>
    devtools.send('Input.dispatchKeyEvent', { type, ...tab });
  await beginTour(page);
  let isOver = false;
  for (let pressed = 0; !isOver && pressed < MOST_STOPS; pressed += AT_ONCE) {
    // A browser takes keys in the order they came, so that none needs to wait for the one before.
    const keys = Array.from({ length: AT_ONCE }, () => [press('rawKeyDown'), press('keyUp')]);
    await Promise.all(keys.flat());
    isOver = await isRound(page);
  }
  await devtools.detach();
  const faults = await endTour(page);
  return isOver ? faults : [...faults, 'the focus never came round'];
}
