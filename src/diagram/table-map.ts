import type { Canvas, Label, Point } from './canvas';
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
    ...(isTurned ? turnedWays(middle, pxPerM) : uprightWays(middle, pxPerM)),
  };
}

type Ways = Pick<TableMap, 'toPoint' | 'toSpot'>;

function uprightWays(middle: Point, pxPerM: number): Ways {
  return {
    toPoint: ({ xM, yM }) => ({ x: middle.x + xM * pxPerM, y: middle.y - yM * pxPerM }),
    toSpot: ({ x, y }) => ({ xM: (x - middle.x) / pxPerM, yM: (middle.y - y) / pxPerM }),
  };
}

/** A quarter turn clockwise. */
function turnedWays(middle: Point, pxPerM: number): Ways {
  return {
    toPoint: ({ xM, yM }) => ({ x: middle.x + yM * pxPerM, y: middle.y + xM * pxPerM }),
    toSpot: ({ x, y }) => ({ xM: (y - middle.y) / pxPerM, yM: (x - middle.x) / pxPerM }),
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
  return isTurned ? { rightM: -upwards, upM: rightwards } : { rightM: rightwards, upM: upwards };
}
