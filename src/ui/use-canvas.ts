import { batch, type ReadonlySignal, useSignal } from '@preact/signals';
import type { RefObject } from 'preact';
import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
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
 *
 * @param taken finds the element where it stands already, to be taken over
 */
export function useCanvas(taken?: string): Measured {
  const holder = useRef<HTMLDivElement>(null);
  const [standing] = useState(() => {
    const element = taken ? document.querySelector(taken) : null;
    return element && sizeOf(element);
  });
  const canvas = useSignal<Canvas>(standing ?? UNMEASURED);
  const isMeasured = useSignal(Boolean(standing));
  // Before the first frame is painted: nothing is drawn at a size that is not its own.
  useLayoutEffect(() => {
    const element = holder.current;
    if (!element) return;
    const measure = () => {
      const size = sizeOf(element);
      batch(() => {
        isMeasured.value = true;
        if (size) canvas.value = size;
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

function sizeOf({ clientWidth: widthPx, clientHeight: heightPx }: Element): Canvas | null {
  if (widthPx <= 0 || heightPx <= 0) return null;
  const rootPx = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
  return { widthPx, heightPx, textPx: (rootPx || 16) * SMALL_TEXT };
}

/** The attributes of a drawing that fills its canvas. */
export function canvasAttributes({ widthPx, heightPx }: Omit<Canvas, 'textPx'>) {
  return { width: widthPx, height: heightPx, viewBox: `0 0 ${widthPx} ${heightPx}` };
}
