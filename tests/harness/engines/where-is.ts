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
 * Brings the first such element that takes up room into view and says where it is; null: there is
 * none. Runs in the page: it must hang on nothing outside itself.
 *
 * @param source a regular expression for the name, '' where the name is told word for word
 */
export function whereIs(asked: { css: string; source: string; name?: string }): Found | null {
  for (const element of document.querySelectorAll<HTMLElement>(asked.css)) {
    const spoken = element.cloneNode(true) as HTMLElement;
    for (const silent of spoken.querySelectorAll('[aria-hidden="true"]')) silent.remove();
    const label = element.getAttribute('aria-label') ?? spoken.textContent;
    const name = label.replace(/\s+/g, ' ').trim();
    if (asked.name !== undefined && asked.name !== name) continue;
    if (asked.source !== '' && !new RegExp(asked.source).test(name)) continue;
    const middle = () => {
      const { left, top, width, height } = element.getBoundingClientRect();
      const [x, y] = [left + width / 2, top + height / 2];
      return { x, y, isOnTop: element.contains(document.elementFromPoint(x, y)) };
    };
    if (element.getBoundingClientRect().height === 0) continue;
    if (!middle().isOnTop) element.scrollIntoView({ block: 'center' });
    return middle();
  }
  return null;
}
