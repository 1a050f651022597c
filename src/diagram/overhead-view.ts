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
const SIDEWAYS_STEPS = [16, 8, 4, 2, 1] as const;
/** How far beyond the object ball its target line is drawn, radii. */
const TARGET_RADII = 2.6;
/** Clear radii behind the cue ball. */
const BEHIND_RADII = 1.2;
/** Balls smaller than this would vanish; they are then drawn larger than true, px. */
const MIN_BALL_PX = 4.5;

/**
 * Lays the shot out from above, the shooter on the left and right of the straight line downwards.
 * The lines' sideways distances are enlarged, as told by `sideways`; the balls and the target line
 * stand about the contact in their true shape.
 */
export function layOutOverheadView(scene: OverheadScene, canvas: Canvas): OverheadView {
  const { ballRadiusM: radiusM, distanceM, cutRad } = scene;
  const sideM = sideExtents(scene);
  const scale = scaleOf(scene, canvas, sideM.max - sideM.min);
  const { pxPerM, sideways } = scale;
  const ballPx = Math.max(MIN_BALL_PX, radiusM * pxPerM);
  const startX = BEHIND_RADII * ballPx;
  const middle = ((sideM.min + sideM.max) / 2) * sideways * pxPerM;
  const group = contactGroup(cutRad, ballPx);
  const straightY = clamp(
    canvas.heightPx / 2 - middle,
    1 - group.top,
    canvas.heightPx - 1 - group.bottom,
  );
  const toPoint = ({ xM, yM }: TablePoint): Point => ({
    x: startX + yM * pxPerM,
    y: straightY + xM * pxPerM * sideways,
  });
  const start = toPoint({ xM: 0, yM: 0 });
  const ghost = toPoint({ xM: 0, yM: distanceM });
  const along = { x: Math.cos(cutRad), y: Math.sin(cutRad) };
  const fromGhost = (px: number): Point => ({
    x: ghost.x + along.x * px,
    y: ghost.y + along.y * px,
  });
  const object = fromGhost(2 * ballPx);
  return {
    cueBall: { cx: start.x, cy: start.y, r: ballPx },
    ghostBall: { cx: ghost.x, cy: ghost.y, r: ballPx },
    objectBall: { cx: object.x, cy: object.y, r: ballPx },
    straight: { from: start, to: ghost },
    aim:
      scene.aimOffsetM === null
        ? null
        : { from: start, to: toPoint({ xM: scene.aimOffsetM, yM: distanceM }) },
    path: scene.path.map(toPoint),
    target: { from: fromGhost(3 * ballPx), to: fromGhost((2 + TARGET_RADII) * ballPx) },
    sideways,
  };
}

/** How far the balls and the target line reach above and below the straight line, px. */
function contactGroup(cutRad: number, ballPx: number) {
  const objectY = 2 * ballPx * Math.sin(cutRad);
  const targetY = (2 + TARGET_RADII) * ballPx * Math.sin(cutRad);
  return {
    top: Math.min(-ballPx, objectY - ballPx, targetY),
    bottom: Math.max(ballPx, objectY + ballPx, targetY),
  };
}

function sideExtents({ aimOffsetM, path }: OverheadScene) {
  let min = Math.min(0, aimOffsetM ?? 0);
  let max = Math.max(0, aimOffsetM ?? 0);
  for (const { xM } of path) {
    min = Math.min(min, xM);
    max = Math.max(max, xM);
  }
  return { min, max };
}

/** Fills the width, unless a short shot's balls or a far aim would outgrow the height. */
function scaleOf(scene: OverheadScene, canvas: Canvas, sideM: number) {
  const radii = BEHIND_RADII + 2 + TARGET_RADII;
  const alongM = scene.distanceM + radii * scene.ballRadiusM;
  const room = canvas.heightPx - 6;
  const pxPerM = Math.min(
    canvas.widthPx / alongM,
    room / groupHeightM(scene),
    room / Math.max(sideM, 1e-9),
  );
  const sideways = SIDEWAYS_STEPS.find((step) => sideM * pxPerM * step <= room) ?? 1;
  return { pxPerM, sideways };
}

function groupHeightM({ cutRad, ballRadiusM }: OverheadScene): number {
  const { top, bottom } = contactGroup(cutRad, ballRadiusM);
  return bottom - top;
}

function clamp(value: number, min: number, max: number): number {
  return Math.min(max, Math.max(min, value));
}
