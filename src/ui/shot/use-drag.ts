import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Point } from '../../diagram/canvas';
import type { Gestures } from '../../state/history';

/** Takes what is held to where the finger now is, px from the drawing's corner. */
export type Move = (at: Point) => void;

type Grip = Move | null;

interface DragPorts {
  readonly model: Gestures;
  /** Takes hold of what lies there, perhaps a moment later; null where nothing can be dragged. */
  grab(at: Point, widthPx: number): Grip | Promise<Grip>;
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
  readonly box: DOMRect;
  /** Undefined until it is known what lies there. */
  move: Grip | undefined;
  isDrag: boolean;
  /** Whether the finger has gone on before that was known. */
  isOver: boolean;
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
  const follow = (held: Touch) => {
    if (held.move === undefined) return;
    if (!held.isDrag) {
      if (!isAtOnce && !isMoved(held)) return;
      if (!held.move) {
        touch.current = null;
        return;
      }
      begin(held);
    }
    place(held);
  };
  const finish = (isTakenAway: boolean) => {
    const held = touch.current;
    if (!held) return;
    // What was dragged before it was known goes where the finger left it, unless touched again.
    held.isOver = held.move === undefined && !isTakenAway && isMoved(held);
    if (held.isOver) return;
    touch.current = null;
    if (held.isDrag) model.endGesture(isTakenAway);
    else if (!isTakenAway) onTap?.(held.start);
  };
  const take = (held: Touch, move: Grip) => {
    held.move = move;
    if (touch.current !== held) return;
    follow(held);
    if (held.isOver) finish(false);
  };
  useLayoutEffect(
    () => () => {
      touch.current = null;
      model.endGesture();
    },
    [model],
  );
  return {
    onPointerDown(event: PointerEvent) {
      if (event.button !== 0 || (touch.current && !touch.current.isOver)) return;
      const drawing = event.currentTarget as Element;
      const box = drawing.getBoundingClientRect();
      const start = pointIn(box, event);
      const held: Touch = {
        start,
        box,
        move: undefined,
        isDrag: false,
        isOver: false,
        last: start,
      };
      touch.current = held;
      const grip = grab(start, box.width);
      if (grip) drawing.setPointerCapture?.(event.pointerId);
      if (grip instanceof Promise) void grip.then((move) => take(held, move));
      else take(held, grip);
    },
    onPointerMove(event: PointerEvent) {
      const held = touch.current;
      if (!held || held.isOver) return;
      held.last = pointIn(held.box, event);
      follow(held);
    },
    onPointerUp: () => finish(false),
    onPointerCancel: () => finish(true),
  };
}

function isMoved({ start, last }: Touch): boolean {
  return Math.hypot(last.x - start.x, last.y - start.y) >= TAP_PX;
}

function pointIn(box: DOMRect, { clientX, clientY }: PointerEvent): Point {
  return { x: clientX - box.left, y: clientY - box.top };
}
