import { useLayoutEffect, useRef } from 'preact/hooks';

/** Either may be what scrolls: on a very low screen the sheet is held to a least height. */
const SCROLLERS = '.choose-place, .choose-sheet';

/**
 * Whoever comes back from a way finds the list scrolled as it was left, and the focus on what was
 * pressed, by its `data-way`.
 *
 * @returns to be told what is pressed, before the list goes
 */
export function useListPlace(isLooking: boolean): (key: string) => void {
  const left = useRef<{ readonly key: string; readonly tops: readonly number[] } | null>(null);
  useLayoutEffect(() => {
    const was = left.current;
    scrollers().forEach((one, at) => {
      if (isLooking) one.scrollTop = 0;
      else if (was) one.scrollTop = was.tops[at] ?? 0;
    });
    if (isLooking || was === null) return;
    left.current = null;
    if (document.activeElement !== document.body) return;
    const pressed = document.querySelector<HTMLElement>(`[data-way="${was.key}"]`);
    pressed?.focus({ preventScroll: true });
  }, [isLooking]);
  return (key) => {
    left.current = { key, tops: scrollers().map(({ scrollTop }) => scrollTop) };
  };
}

function scrollers(): readonly HTMLElement[] {
  return [...document.querySelectorAll<HTMLElement>(SCROLLERS)];
}
