import { useRef } from 'preact/hooks';

/** What something was before it last changed; the same as now while it never has. */
export function useFormer<T>(now: T): T {
  const known = useRef({ now, former: now });
  if (known.current.now !== now) known.current = { now, former: known.current.now };
  return known.current.former;
}
