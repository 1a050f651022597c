import { useEffect, useMemo, useRef } from 'preact/hooks';
import { createHoldRepeat, type HeldAction } from './hold-repeat';

/** How far beside a button a thumb that rolls still means it, px. */
const ROLL_PX = 24;

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
      onPointerMove(event: PointerEvent) {
        if (event.buttons !== 0 && isBeside(event)) repeat.slideOff();
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

function isBeside({ currentTarget, clientX, clientY }: PointerEvent): boolean {
  if (!(currentTarget instanceof Element)) return false;
  const { left, right, top, bottom } = currentTarget.getBoundingClientRect();
  const beyondX = Math.max(left - clientX, clientX - right);
  const beyondY = Math.max(top - clientY, clientY - bottom);
  return Math.max(beyondX, beyondY) > ROLL_PX;
}
