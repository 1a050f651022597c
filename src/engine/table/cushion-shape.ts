import { grown, type PlanBox } from './plan-box';
import { dropDepth } from './pocket-shape';
import type { PocketCut } from './pocket-standard';
import type { Point } from './point';

/** Near is the break end; left and right are those of one who stands there. */
export type CushionName = 'near' | 'near-right' | 'far-right' | 'far' | 'far-left' | 'near-left';

/** A straight piece of a cushion's core. */
export interface CorePiece {
  readonly fromX: number;
  readonly fromY: number;
  /** Unit vector, the bed on its left. */
  readonly alongX: number;
  readonly alongY: number;
  readonly lengthM: number;
}

/**
 * A cushion seen from above: a jaw, the nose, a jaw. Its edge lies at nose height, and a rounding's
 * radius off its core on the bed's side; so the points are round, and all else is straight.
 */
export interface CushionShape {
  readonly name: CushionName;
  /** First jaw, nose, second jaw. */
  readonly core: readonly CorePiece[];
  readonly roundingM: number;
  /** Holds all of the cushion. */
  readonly box: PlanBox;
}

/** How a cushion ends: at which pocket, and how far that one's axis is turned from the nose line. */
interface CushionEnd {
  readonly cut: PocketCut;
  readonly axisRad: number;
}

/** @param from, to its two points, before they are rounded; the bed is on the left between them */
export function cushionShape(
  name: CushionName,
  from: Point,
  fromEnd: CushionEnd,
  to: Point,
  toEnd: CushionEnd,
  roundingM: number,
): CushionShape {
  const lengthM = Math.hypot(to.x - from.x, to.y - from.y);
  const nose = { x: (to.x - from.x) / lengthM, y: (to.y - from.y) / lengthM };
  const first = turned(nose, Math.PI - fromEnd.cut.cutRad);
  const last = turned(nose, toEnd.cut.cutRad - Math.PI);
  const start = inset(onward(from, first, -jawLength(fromEnd)), first, first, roundingM);
  const a = inset(from, first, nose, roundingM);
  const b = inset(to, nose, last, roundingM);
  const end = inset(onward(to, last, jawLength(toEnd)), last, last, roundingM);
  const core = [piece(start, a), piece(a, b), piece(b, end)];
  return { name, core, roundingM, box: grown(boxAround([start, a, b, end]), roundingM) };
}

/** Counter-clockwise seen from above. */
function turned({ x, y }: Point, byRad: number): Point {
  const [c, s] = [Math.cos(byRad), Math.sin(byRad)];
  return { x: x * c - y * s, y: y * c + x * s };
}

function onward({ x, y }: Point, along: Point, byM: number): Point {
  return { x: x + byM * along.x, y: y + byM * along.y };
}

/** The jaws run as deep as the middle of the hole. */
function jawLength({ cut, axisRad }: CushionEnd): number {
  return dropDepth(cut) / Math.cos(axisRad - (Math.PI - cut.cutRad));
}

/** The point of two edges, one before and one behind it, both moved away from the bed. */
function inset({ x, y }: Point, before: Point, behind: Point, byM: number): Point {
  // The bed is on the left: away from it is to the right, (y, −x).
  const per = byM / (1 + before.x * behind.x + before.y * behind.y);
  return { x: x + per * (before.y + behind.y), y: y - per * (before.x + behind.x) };
}

function piece(from: Point, to: Point): CorePiece {
  const lengthM = Math.hypot(to.x - from.x, to.y - from.y);
  return {
    fromX: from.x,
    fromY: from.y,
    alongX: (to.x - from.x) / lengthM,
    alongY: (to.y - from.y) / lengthM,
    lengthM,
  };
}

function boxAround(points: readonly Point[]): PlanBox {
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  return {
    minX: Math.min(...xs),
    maxX: Math.max(...xs),
    minY: Math.min(...ys),
    maxY: Math.max(...ys),
  };
}
