/** An element by selector and, where given, by the name that a screen reader would say. */
export interface Target {
  readonly css: string;
  readonly name?: string | RegExp;
}

export interface Found {
  /** Its middle, CSS pixels from the screen's corner. */
  readonly x: number;
  readonly y: number;
  /** Whether a finger put there touches it. */
  readonly isOnTop: boolean;
}

/**
 * Finds the first such element that takes up room; null: there is none. Runs in the page: it must
 * hang on nothing outside itself.
 *
 * @param source a regular expression for the name, '' where the name is told word for word
 * @param brings whether to bring it into view, and to wait until it stands still there
 */
export async function whereIs(asked: {
  css: string;
  source: string;
  name?: string;
  brings: boolean;
}): Promise<Found | null> {
  const isAsked = (element: HTMLElement) => {
    const spoken = element.cloneNode(true) as HTMLElement;
    for (const silent of spoken.querySelectorAll('[aria-hidden="true"]')) silent.remove();
    const label = element.getAttribute('aria-label') ?? spoken.textContent ?? '';
    const name = label.replace(/\s+/g, ' ').trim();
    if (asked.source !== '' && !new RegExp(asked.source).test(name)) return false;
    if (asked.name !== undefined && asked.name !== name) return false;
    return element.getBoundingClientRect().height > 0;
  };
  const element = [...document.querySelectorAll<HTMLElement>(asked.css)].find(isAsked);
  if (!element) return null;
  const middle = () => {
    const { left, top, width, height } = element.getBoundingClientRect();
    const [x, y] = [left + width / 2, top + height / 2];
    return { x, y, isOnTop: element.contains(document.elementFromPoint(x, y)) };
  };
  if (!asked.brings) return middle();
  if (!middle().isOnTop) element.scrollIntoView({ block: 'center' });
  // A place that has just been opened may yet move the focus, and scroll.
  const { x, y } = middle();
  await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
  const found = middle();
  return { ...found, isOnTop: found.isOnTop && found.x === x && found.y === y };
}
