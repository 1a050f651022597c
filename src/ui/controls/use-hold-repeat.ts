import { useEffect, useMemo, useRef } from 'preact/hooks';
import { createHoldRepeat, type HeldAction } from './hold-repeat';

/** Handlers for a button that repeats while held; losing the pointer or the window stops it. */
export function useHoldRepeat(action: HeldAction) {
  const latest = useRef(action);
  latest.current = action;
  const repeat = useMemo(() => createHoldRepeat(() => latest.current), []);
  useEffect(() => {
    window.addEventListener('blur', repeat.release);
    return () => {
      window.removeEventListener('blur', repeat.release);
      repeat.release();
    };
  }, [repeat]);
  return useMemo(
    () => ({
      onPointerDown(event: PointerEvent) {
        (event.currentTarget as Element).setPointerCapture?.(event.pointerId);
        repeat.press(event);
      },
      onPointerUp: repeat.release,
      onPointerCancel: repeat.cancel,
      onLostPointerCapture: repeat.release,
      onContextMenu: (event: Event) => event.preventDefault(),
      onClick: repeat.click,
    }),
    [repeat],
  );
}
