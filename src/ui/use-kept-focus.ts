import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/**
 * Keeps the keyboard where the eye is when panels open and close. What opens a panel carries its
 * name in `data-opens`: focus that a closing panel took away goes back there. Where a panel takes
 * the whole place, its heading gets the focus; the place itself where the heading is still to come.
 */
export function useKeptFocus(panel: string): RefObject<HTMLElement | null> {
  const place = useRef<HTMLElement>(null);
  const before = useRef(panel);
  useEffect(() => {
    const closed = before.current;
    before.current = panel;
    const isNowhere = [document.body, place.current].includes(
      document.activeElement as HTMLElement,
    );
    if (closed === panel || !isNowhere) return;
    const opener = place.current?.querySelector<HTMLElement>(
      `[data-opens="${CSS.escape(closed)}"]`,
    );
    const next = opener ?? headingIn(place.current) ?? place.current;
    next?.focus({ preventScroll: opener !== null });
  }, [panel]);
  return place;
}

/** The heading of a panel that takes a whole place. */
export function headingIn(place: Element | null): HTMLElement | null {
  return place?.querySelector<HTMLElement>('h1[tabindex]') ?? null;
}
