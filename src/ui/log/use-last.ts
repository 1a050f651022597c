import { useRef } from 'preact/hooks';

/** While the next is worked out the last one stays. */
export function useLast<T>(next: T | null): T | null {
  const last = useRef<T | null>(null);
  if (next !== null) last.current = next;
  return last.current;
}
