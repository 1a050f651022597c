import type { Canvas, Circle, Point } from './canvas';

/** A point on the table: x right of the straight line, y along it, m. */
export interface TablePoint {
  readonly xM: number;
  readonly yM: number;
}

/** What the strip from above shows. Lengths in m, angles in rad, right +. */
export interface OverheadScene {
  readonly ballRadiusM: number;
  /** Nose to nose. */
  readonly tableLengthM: number;
  readonly distanceM: number;
  readonly cutRad: number;
  /** Null while there is no answer. */
  readonly aimOffsetM: number | null;
  /** The cue ball's centre from its rest to the contact. */
  readonly path: readonly TablePoint[];
}

export interface Segment {
  readonly from: Point;
  readonly to: Point;
}

export interface OverheadView {
  readonly cueBall: Circle;
  readonly ghostBall: Circle;
  readonly objectBall: Circle;
  readonly straight: Segment;
  readonly aim: Segment | null;
  readonly path: readonly Point[];
  readonly target: Segment;
  /** Pixels of a metre along the table. */
  readonly pxPerM: number;
  /** Where the room for the run's scale begins, px; null where the height has none. */
  readonly runTopY: number | null;
}

/** How many times the lines' sideways distances are enlarged, always. */
export const SIDEWAYS = 6;
/** The longest way on a table twice as long as wide, from corner to corner, in its lengths. */
const LONGEST_LENGTHS = Math.hypot(1, 0.5);
/** How far beyond the object ball its target line is drawn, radii. */
const TARGET_RADII = 2.6;
/** Balls smaller than this would vanish; they are then drawn larger than true, px. */
const MIN_BALL_PX = 5;
/** Clear on either side, so that a finger has room where the cue ball is held, px. */
const SIDE_PX = 20;
/** The height of the run's scale, in heights of text, and what the trace needs beside it, px. */
const RUN = 2.8;
const LEAST_TRACE_PX = 26;

/**
 * Lays the shot out from above, the shooter on the left and right of the straight line downwards.
 * One scale for every shot: the table's own length fixes the lengths, and sideways distances of the
 * lines are enlarged by {@link SIDEWAYS}; what is farther out leaves the strip. The balls and the
 * target line stand about the contact in their true shape. Below, how far such a ball would roll.
 */
export function layOutOverheadView(scene: OverheadScene, canvas: Canvas): OverheadView {
  const { distanceM, cutRad, ballRadiusM, aimOffsetM } = scene;
  const runPx = canvas.textPx * RUN;
  const hasRun = canvas.heightPx - runPx >= LEAST_TRACE_PX;
  const straightY = (canvas.heightPx - (hasRun ? runPx : 0)) / 2;
  const contactX = canvas.widthPx - SIDE_PX - (2 + TARGET_RADII) * MIN_BALL_PX;
  const pxPerM = Math.max(1, contactX - SIDE_PX) / (LONGEST_LENGTHS * scene.tableLengthM);
  const ballPx = Math.max(MIN_BALL_PX, ballRadiusM * pxPerM);
  const toPoint = ({ xM, yM }: TablePoint): Point => ({
    x: contactX + (yM - distanceM) * pxPerM,
    y: straightY + xM * pxPerM * SIDEWAYS,
  });
  const fromGhost = (radii: number): Point => ({
    x: contactX + Math.cos(cutRad) * radii * ballPx,
    y: straightY + Math.sin(cutRad) * radii * ballPx,
  });
  const start = toPoint({ xM: 0, yM: 0 });
  const ghost = { x: contactX, y: straightY };
  const aimEnd = aimOffsetM === null ? null : toPoint({ xM: aimOffsetM, yM: distanceM });
  const ballAt = ({ x, y }: Point): Circle => ({ cx: x, cy: y, r: ballPx });
  return {
    cueBall: ballAt(start),
    ghostBall: ballAt(ghost),
    objectBall: ballAt(fromGhost(2)),
    straight: { from: start, to: ghost },
    aim: aimEnd && { from: start, to: aimEnd },
    path: scene.path.map(toPoint),
    target: { from: fromGhost(3), to: fromGhost(2 + TARGET_RADII) },
    pxPerM,
    runTopY: hasRun ? canvas.heightPx - runPx : null,
  };
}
