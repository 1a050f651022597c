import { type Canvas, type Label, type Point, textWidthPx } from './canvas';
import { type BedSpot, RAIL_SHARE } from './table-diamonds';
import type { Rect } from './trial-view';

/** Where a table lies on the drawing, and the way from one to the other and back. */
export interface TableMap {
  /** Whether the break end is on the left; else it is below. */
  readonly isTurned: boolean;
  readonly pxPerM: number;
  /** Rails and bed together. */
  readonly frame: Rect;
  /** From nose to nose. */
  readonly bed: Rect;
  readonly railPx: number;
  /** Under the frame: where it is the break end, and how large balls are drawn. */
  readonly endLabel: Label;
  readonly scaleLabel: Label;
  toPoint(spot: BedSpot): Point;
  toSpot(point: Point): BedSpot;
}

interface BedSize {
  readonly lengthM: number;
  readonly widthM: number;
}

/** What stands under a table, at its left and its right end; empty where nothing does. */
export type EndWords = readonly [left: string, right: string];

/** Letters of a gap between the two. */
const GAP_LETTERS = 2;

/**
 * Which end is which, and which side is the left one seen from the break end: as much as there is
 * room for.
 *
 * @param also what else is to be said where there is room, as on how large balls are drawn
 */
export function endWords(
  { isTurned, frame }: Pick<TableMap, 'isTurned' | 'frame'>,
  textPx: number,
  also = '',
): EndWords {
  const told: readonly EndWords[] = isTurned
    ? [
        [SIDED, also === '' ? FAR_END : `${also} · ${FAR_END}`],
        [SIDED, FAR_END],
        [BREAK_END, FAR_END],
      ]
    : [[BREAK_END, also]];
  const isRoomy = ([left, right]: EndWords) =>
    textWidthPx(left.length + GAP_LETTERS + right.length, textPx) < frame.width;
  return told.find(isRoomy) ?? [BREAK_END, ''];
}

const BREAK_END = 'break end';
const SIDED = `from the ${BREAK_END}, left is up`;
const FAR_END = 'far end';

/** Clear height for the line of text under the frame. */
const TEXT_LINE = 1.35;
const LEAST_PX = 24;

/** Lays a table out as large as the canvas allows, along the canvas's longer side. */
export function layOutTable({ lengthM, widthM }: BedSize, canvas: Canvas): TableMap {
  const isTurned = canvas.widthPx > canvas.heightPx;
  const railM = RAIL_SHARE * lengthM;
  const [acrossM, upM] = isTurned ? [lengthM, widthM] : [widthM, lengthM];
  const roomPx = Math.max(LEAST_PX, canvas.heightPx - TEXT_LINE * canvas.textPx);
  const wantedPxPerM = Math.min(
    Math.max(LEAST_PX, canvas.widthPx) / (acrossM + 2 * railM),
    roomPx / (upM + 2 * railM),
  );
  const pxPerM = Math.max(1, wantedPxPerM);
  const railPx = railM * pxPerM;
  const middle = { x: canvas.widthPx / 2, y: roomPx / 2 };
  const bed = centred(middle, acrossM * pxPerM, upM * pxPerM);
  const frame = centred(middle, bed.width + 2 * railPx, bed.height + 2 * railPx);
  const labelY = frame.y + frame.height + canvas.textPx;
  return {
    isTurned,
    pxPerM,
    frame,
    bed,
    railPx,
    endLabel: { x: frame.x, y: labelY, anchor: 'start' },
    scaleLabel: { x: frame.x + frame.width, y: labelY, anchor: 'end' },
    ...waysOf(isTurned, middle, pxPerM),
  };
}

type Ways = Pick<TableMap, 'toPoint' | 'toSpot'>;

/** A turned table is turned a quarter clockwise. */
function waysOf(isTurned: boolean, middle: Point, pxPerM: number): Ways {
  return {
    toPoint({ xM, yM }) {
      const [rightM, upM] = isTurned ? [yM, -xM] : [xM, yM];
      return { x: middle.x + rightM * pxPerM, y: middle.y - upM * pxPerM };
    },
    toSpot({ x, y }) {
      const { rightM, upM } = stepOnTable(
        isTurned,
        (x - middle.x) / pxPerM,
        (middle.y - y) / pxPerM,
      );
      return { xM: rightM, yM: upM };
    },
  };
}

function centred(middle: Point, width: number, height: number): Rect {
  return { x: middle.x - width / 2, y: middle.y - height / 2, width, height };
}

/** A step as seen on the drawing, in the frame of the table. */
export function stepOnTable(
  isTurned: boolean,
  rightwards: number,
  upwards: number,
): { readonly rightM: number; readonly upM: number } {
  // Less than nothing, not its negation: a spot of −0 would not be the same as one of 0.
  return isTurned ? { rightM: 0 - upwards, upM: rightwards } : { rightM: rightwards, upM: upwards };
}
