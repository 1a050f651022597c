import { type Canvas, type Label, textWidthPx } from './canvas';

/** A scale of table lengths, with how far the cue ball would roll on it. */
export interface RunScale {
  readonly y: number;
  readonly fromX: number;
  readonly toX: number;
  readonly ticks: readonly { readonly x: number; readonly lengths: number }[];
  /** Where the handle stands: at the end for whatever rolls farther. */
  readonly atX: number;
  /** Where the softest stands that brings the object ball to the pocket; null where not known. */
  readonly reachX: number | null;
  /** Where that is named; null where it has no room. */
  readonly reachLabel: Label | null;
  readonly pxPerLength: number;
}

/** The most that is drawn, in table lengths: a firm break rolls no farther. */
export const MOST_LENGTHS = 6;
/** Clear on either side, so that a finger has room at both ends, px. */
const SIDE_PX = 20;
/** The scale's line stands so far down its room, in heights of text. */
const LINE = 1.15;
/** Letters of "reaches the pocket". */
const REACH_LETTERS = 18;

/** Lays the scale out in the room that begins at `topY`. */
export function layOutRun(
  { runLengths, reachLengths }: { readonly runLengths: number; readonly reachLengths: number | null },
  topY: number,
  { widthPx, textPx }: Canvas,
): RunScale {
  const [fromX, toX] = [SIDE_PX, Math.max(SIDE_PX + 1, widthPx - SIDE_PX)];
  const pxPerLength = (toX - fromX) / MOST_LENGTHS;
  const toPx = (lengths: number) =>
    fromX + Math.min(MOST_LENGTHS, Math.max(0, lengths)) * pxPerLength;
  const ticks = Array.from({ length: MOST_LENGTHS + 1 }, (_, lengths) => ({
    x: toPx(lengths),
    lengths,
  }));
  const y = topY + textPx * LINE;
  const isShown = reachLengths !== null && reachLengths <= MOST_LENGTHS;
  const reachX = isShown ? toPx(reachLengths) : null;
  return {
    y,
    fromX,
    toX,
    ticks,
    atX: toPx(runLengths),
    reachX,
    reachLabel: reachX === null ? null : labelOf(reachX, topY + textPx * 0.75, widthPx, textPx),
    pxPerLength,
  };
}

function labelOf(x: number, y: number, widthPx: number, textPx: number): Label | null {
  const gap = textPx * 0.5;
  const width = textWidthPx(REACH_LETTERS, textPx);
  if (x + gap + width <= widthPx) return { x: x + gap, y, anchor: 'start' };
  return x - gap - width >= 0 ? { x: x - gap, y, anchor: 'end' } : null;
}
