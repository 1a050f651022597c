import { batch, type ReadonlySignal, useSignal } from '@preact/signals';
import type { RefObject } from 'preact';
import { useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import type { Canvas } from '../diagram/canvas';
import { steady } from '../state/steady';

/** Share of the page's text size that drawings use. */
const SMALL_TEXT = 0.8125;
const UNMEASURED: Canvas = { widthPx: 360, heightPx: 180, textPx: 13 };

type Measured = [
  holder: RefObject<HTMLDivElement | null>,
  canvas: ReadonlySignal<Canvas>,
  isMeasured: ReadonlySignal<boolean>,
];

/**
 * The size of an element, followed as it changes, so that drawings are laid out in real pixels; and
 * whether it was looked at. What waits for that is not drawn twice.
 */
export function useCanvas(): Measured {
  const holder = useRef<HTMLDivElement>(null);
  const canvas = useSignal<Canvas>(UNMEASURED);
  const isMeasured = useSignal(false);
  // Before the first frame is painted: nothing is drawn at a size that is not its own.
  useLayoutEffect(() => {
    const element = holder.current;
    if (!element) return;
    const measure = () => {
      const { clientWidth: widthPx, clientHeight: heightPx } = element;
      const rootPx = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
      batch(() => {
        isMeasured.value = true;
        if (widthPx > 0 && heightPx > 0) {
          canvas.value = { widthPx, heightPx, textPx: (rootPx || 16) * SMALL_TEXT };
        }
      });
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [canvas, isMeasured]);
  // An observer tells first of the size that is known already.
  return [holder, useMemo(() => steady(canvas), [canvas]), isMeasured];
}

/** The attributes of a drawing that fills its canvas. */
export function canvasAttributes({ widthPx, heightPx }: Omit<Canvas, 'textPx'>) {
  return { width: widthPx, height: heightPx, viewBox: `0 0 ${widthPx} ${heightPx}` };
}
