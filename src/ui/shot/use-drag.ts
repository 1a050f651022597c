import { useEffect, useRef } from 'preact/hooks';
import type { Point } from '../../diagram/canvas';
import type { Gestures } from '../../state/history';

/** Takes what is held to where the finger now is, px from the drawing's corner. */
export type Move = (at: Point) => void;

interface DragPorts {
  readonly model: Gestures;
  /** Takes hold of what lies there; null where nothing can be dragged. */
  grab(at: Point, widthPx: number): Move | null;
  /** Told of a touch that moved nothing. */
  onTap?(at: Point): void;
  /** Whether what is held goes to the finger at once, without a first stretch. */
  isAtOnce?: boolean;
}

/** A finger that has moved less than this meant to tap, px. */
const TAP_PX = 6;

/** One touch of a drawing. */
interface Touch {
  readonly start: Point;
  readonly move: Move | null;
  readonly box: DOMRect;
  isDrag: boolean;
  last: Point;
}

/**
 * Pointer handlers for a drawing of which parts are dragged. All of a drag is one gesture, and one that
 * the system takes away goes back to where it began.
 */
export function useDrag({ model, grab, onTap, isAtOnce = false }: DragPorts) {
  const touch = useRef<Touch | null>(null);
  const place = (held: Touch) => {
    held.move?.(held.last);
  };
  const begin = (held: Touch) => {
    held.isDrag = true;
    model.beginGesture(true);
  };
  const finish = (isTakenAway: boolean) => {
    const held = touch.current;
    touch.current = null;
    if (!held) return;
    if (held.isDrag) model.endGesture(isTakenAway);
    else if (!isTakenAway) onTap?.(held.start);
  };
  useEffect(() => () => model.endGesture(), [model]);
  return {
    onPointerDown(event: PointerEvent) {
      if (event.button !== 0 || touch.current) return;
      const drawing = event.currentTarget as Element;
      const box = drawing.getBoundingClientRect();
      const start = pointIn(box, event);
      const move = grab(start, box.width);
      if (move) drawing.setPointerCapture?.(event.pointerId);
      const held = { start, move, box, isDrag: false, last: start };
      touch.current = held;
      if (move && isAtOnce) {
        begin(held);
        place(held);
      }
    },
    onPointerMove(event: PointerEvent) {
      const held = touch.current;
      if (!held) return;
      held.last = pointIn(held.box, event);
      const { start, last } = held;
      if (!held.isDrag) {
        if (Math.hypot(last.x - start.x, last.y - start.y) < TAP_PX) return;
        if (!held.move) {
          touch.current = null;
          return;
        }
        begin(held);
      }
      place(held);
    },
    onPointerUp: () => finish(false),
    onPointerCancel: () => finish(true),
  };
}

function pointIn(box: DOMRect, { clientX, clientY }: PointerEvent): Point {
  return { x: clientX - box.left, y: clientY - box.top };
}
