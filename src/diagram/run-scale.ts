import { type Canvas, type Label, textWidthPx } from './canvas';

/** What a scale tells, in table lengths. */
export interface Runs {
  /** How many a ball as fast as the cue ball rolls. */
  readonly runLengths: number;
  /** The same of the softest that brings the object ball to the pocket; null where not known. */
  readonly reachLengths: number | null;
}

/** A scale of table lengths, with how far the cue ball would roll on it. */
export interface RunScale {
  readonly y: number;
  readonly fromX: number;
  readonly toX: number;
  /** Without a figure where the scale's own name stands. */
  readonly ticks: readonly { readonly x: number; readonly figure: string }[];
  /** Where the handle stands: at the end for whatever rolls farther. */
  readonly atX: number;
  /** Where the softest stands that brings the object ball to the pocket; null where not known. */
  readonly reachX: number | null;
  /** What that is called, as far as there is room beside the handle. */
  readonly reachLabel: (Label & { readonly text: string }) | null;
  readonly pxPerLength: number;
}

/** The most that is drawn, in table lengths: a firm break rolls no farther. */
export const MOST_LENGTHS = 6;
/** Clear on either side, so that a finger has room at both ends, px. */
const SIDE_PX = 20;
/** The scale's line stands so far down its room, in heights of text. */
const LINE = 1.15;
/** Letters of "lengths rolled", at the left end, and clear space after it. */
const NAME_LETTERS = 15;
/** What the softest is called, in full or where room is short. */
const REACH_NAMES = ['reaches the pocket', 'reaches'];
/** Half the width of the handle, which stands on the names' line, px. */
const HANDLE_PX = 12;

/** Lays the scale out in the room that begins at `topY`. */
export function layOutRun(
  { runLengths, reachLengths }: Runs,
  topY: number,
  { widthPx, textPx }: Canvas,
): RunScale {
  const [fromX, toX] = [SIDE_PX, Math.max(SIDE_PX + 1, widthPx - SIDE_PX)];
  const pxPerLength = (toX - fromX) / MOST_LENGTHS;
  const toPx = (lengths: number) =>
    fromX + Math.min(MOST_LENGTHS, Math.max(0, lengths)) * pxPerLength;
  const ticks = Array.from({ length: MOST_LENGTHS + 1 }, (_, lengths) => ({
    x: toPx(lengths),
    figure: toPx(lengths) < textWidthPx(NAME_LETTERS, textPx) ? '' : `${lengths}`,
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
    reachLabel: reachX === null ? null : labelOf(reachX, toPx(runLengths), y, widthPx, textPx),
    pxPerLength,
  };
}

/** Beside its mark, on either side of it, where it meets neither the handle nor the edge. */
function labelOf(
  x: number,
  handleX: number,
  lineY: number,
  widthPx: number,
  textPx: number,
): RunScale['reachLabel'] {
  const gap = textPx * 0.5;
  for (const text of REACH_NAMES) {
    const width = textWidthPx(text.length, textPx);
    for (const side of [1, -1]) {
      const [near, far] = [x + side * gap, x + side * (gap + width)];
      const isFree =
        Math.max(near, far) < handleX - HANDLE_PX || Math.min(near, far) > handleX + HANDLE_PX;
      if (isFree && far >= 0 && far <= widthPx) {
        return { x: near, y: lineY - textPx * 0.4, anchor: side > 0 ? 'start' : 'end', text };
      }
    }
  }
  return null;
}
