import type { Canvas, Point } from './canvas';

/** Half of what a thumb covers of what it drags, and clear space, px. */
const THUMB_PX = 44;

/** A note about what a finger drags. */
export interface FingerNote {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Whether it is high, and goes beside the finger rather than over it. */
  readonly isTall: boolean;
  /** The side of the finger that the hand leaves free: right +1, left −1. */
  readonly freeSide: 1 | -1;
  /** How far above the drawing there is room, px. */
  readonly abovePx: number;
}

/**
 * Where a note stands clear of a finger: over it where there is the height, else beside it, on the
 * side that the hand leaves free as long as it has the width.
 * @param at the finger, px
 * @returns its upper left corner, px
 */
export function offFinger(
  at: Point,
  { widthPx, heightPx, isTall, freeSide, abovePx }: FingerNote,
  canvas: Canvas,
): Point {
  const overY = at.y - THUMB_PX - heightPx;
  if (!isTall && overY >= -abovePx) {
    return { x: within(at.x - widthPx / 2, canvas.widthPx - widthPx), y: overY };
  }
  const leftX = at.x - THUMB_PX - widthPx;
  const rightX = at.x + THUMB_PX;
  const hasLeft = leftX >= 0;
  const hasRight = rightX + widthPx <= canvas.widthPx;
  const isLeft = freeSide < 0 ? hasLeft || !hasRight : hasLeft && !hasRight;
  const y = at.y - THUMB_PX - heightPx / 2;
  const top = Math.min(y, canvas.heightPx - heightPx);
  return {
    x: within(isLeft ? leftX : rightX, canvas.widthPx - widthPx),
    y: Math.max(-abovePx, top),
  };
}

function within(value: number, most: number): number {
  return Math.max(0, Math.min(most, value));
}
