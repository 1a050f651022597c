import { type ReadonlySignal, useSignal } from '@preact/signals';
import { useLayoutEffect } from 'preact/hooks';

/** Whether a media query holds, followed as the screen is turned or changes its size. */
export function useMedia(query: string): ReadonlySignal<boolean> {
  const holds = useSignal(matchMedia(query).matches);
  useLayoutEffect(() => {
    const list = matchMedia(query);
    const look = () => {
      holds.value = list.matches;
    };
    list.addEventListener('change', look);
    return () => list.removeEventListener('change', look);
  }, [query, holds]);
  return holds;
}
