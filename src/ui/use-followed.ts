import { effect } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';

/**
 * Does something whenever what it reads changes, and looks at once whether that is so.
 * `useSignalEffect` has the browser draw one more frame to look, at each move of a finger.
 *
 * @param follow reads nothing but signals
 */
export function useFollowed(follow: () => void): void {
  const first = useRef(follow);
  useEffect(() => effect(() => first.current()), []);
}
