import type { Canvas, Circle, Point } from './canvas';

/** A point on the table: x right of the straight line, y along it, m. */
export interface TablePoint {
  readonly xM: number;
  readonly yM: number;
}

/** What the strip from above shows. Lengths in m, angles in rad, right +. */
export interface OverheadScene {
  readonly ballRadiusM: number;
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
  /** How many times the lines' sideways distances are enlarged. */
  readonly sideways: number;
}

/** Few steps, so that the enlargement rarely changes under the thumb. */
const SIDEWAYS_STEPS = [16, 12, 8, 6, 4, 3, 2, 1.5, 1] as const;
/** How far beyond the object ball its target line is drawn, radii. */
const TARGET_RADII = 2.6;
/** Clear radii behind the cue ball. */
const BEHIND_RADII = 1.2;
/** Balls smaller than this would vanish; they are then drawn larger than true, px. */
const MIN_BALL_PX = 4.5;
/** Kept clear above and below, px. */
const MARGIN_PX = 2;

/**
 * Lays the shot out from above, the shooter on the left and right of the straight line downwards.
 * The lines' sideways distances are enlarged as far as the height allows, and `sideways` tells how
 * much; the balls and the target line stand about the contact in their true shape.
 */
export function layOutOverheadView(scene: OverheadScene, canvas: Canvas): OverheadView {
  const { distanceM, cutRad } = scene;
  const scale = scaleOf(scene, canvas);
  const { pxPerM, sideways, ballPx } = scale;
  const startX = BEHIND_RADII * ballPx;
  const straightY = canvas.heightPx / 2 - (scale.top + scale.bottom) / 2;
  const toPoint = ({ xM, yM }: TablePoint): Point => ({
    x: startX + yM * pxPerM,
    y: straightY + xM * pxPerM * sideways,
  });
  const start = toPoint({ xM: 0, yM: 0 });
  const ghost = toPoint({ xM: 0, yM: distanceM });
  const fromGhost = (radii: number): Point => ({
    x: ghost.x + Math.cos(cutRad) * radii * ballPx,
    y: ghost.y + Math.sin(cutRad) * radii * ballPx,
  });
  const { aimOffsetM } = scene;
  return {
    cueBall: { cx: start.x, cy: start.y, r: ballPx },
    ghostBall: { cx: ghost.x, cy: ghost.y, r: ballPx },
    objectBall: { cx: fromGhost(2).x, cy: fromGhost(2).y, r: ballPx },
    straight: { from: start, to: ghost },
    aim:
      aimOffsetM === null ? null : { from: start, to: toPoint({ xM: aimOffsetM, yM: distanceM }) },
    path: scene.path.map(toPoint),
    target: { from: fromGhost(3), to: fromGhost(2 + TARGET_RADII) },
    sideways,
  };
}

/** A reach from the straight line: `top` to its left, not positive, `bottom` to its right. */
interface Reach {
  readonly top: number;
  readonly bottom: number;
}

/** Fills the width, unless a short shot's balls or a far aim would outgrow the height. */
function scaleOf(scene: OverheadScene, canvas: Canvas) {
  const linesM = reachOfLines(scene);
  const ballsInRadii = reachOfBalls(scene.cutRad);
  const radiusM = scene.ballRadiusM;
  const room = Math.max(1, canvas.heightPx - 2 * MARGIN_PX);
  const trueHeightM = heightOf(together(linesM, 1, ballsInRadii, radiusM));
  const alongM = scene.distanceM + (BEHIND_RADII + 2 + TARGET_RADII) * radiusM;
  const pxPerM = Math.min(canvas.widthPx / alongM, room / trueHeightM);
  const ballPx = Math.max(MIN_BALL_PX, radiusM * pxPerM);
  const drawnAt = (step: number) => together(linesM, step * pxPerM, ballsInRadii, ballPx);
  const sideways = SIDEWAYS_STEPS.find((step) => heightOf(drawnAt(step)) <= room) ?? 1;
  return { pxPerM, ballPx, sideways, ...drawnAt(sideways) };
}

function reachOfLines({ aimOffsetM, path }: OverheadScene): Reach {
  let top = Math.min(0, aimOffsetM ?? 0);
  let bottom = Math.max(0, aimOffsetM ?? 0);
  for (const { xM } of path) {
    top = Math.min(top, xM);
    bottom = Math.max(bottom, xM);
  }
  return { top, bottom };
}

/** The balls and the target line, in radii. */
function reachOfBalls(cutRad: number): Reach {
  const objectY = 2 * Math.sin(cutRad);
  const targetY = (2 + TARGET_RADII) * Math.sin(cutRad);
  return {
    top: Math.min(-1, objectY - 1, targetY),
    bottom: Math.max(1, objectY + 1, targetY),
  };
}

function together(lines: Reach, linesBy: number, balls: Reach, ballsBy: number): Reach {
  return {
    top: Math.min(lines.top * linesBy, balls.top * ballsBy),
    bottom: Math.max(lines.bottom * linesBy, balls.bottom * ballsBy),
  };
}

function heightOf({ top, bottom }: Reach): number {
  return bottom - top;
}
