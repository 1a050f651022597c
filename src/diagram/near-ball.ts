import type { Canvas, Circle, Point } from './canvas';
import type { Segment } from './overhead-view';

/** Where the tip touches the cue ball, and what it and the ball are like. */
export interface TipOnBall {
  /** Fractions of the ball's radius: side right +, height up +. */
  readonly side: number;
  readonly height: number;
  /** How far from the centre it may touch, fractions of the radius. */
  readonly limit: number;
  /** Radius of the tip's dome and width of the tip, in radii of the ball. */
  readonly domeRadii: number;
  readonly widthRadii: number;
}

/** The cue ball in front with tip, cue and the two lines that lead to the marks, px. */
export interface NearBall {
  readonly ball: Circle;
  /** The ring that the contact must not leave. */
  readonly limit: Circle;
  readonly tip: Circle;
  /** Null while there is no answer. */
  readonly lines: NearLines | null;
}

export interface NearLines {
  /** From the ball's centre to its rim, and on to the aim's mark. */
  readonly aimOnBall: Segment;
  readonly aim: Segment;
  /** From the ball's rim to the stick's mark, on the line of the tip. */
  readonly cue: Segment;
  /** The shaft's outline, from the tip on to the edge of the picture or beyond. */
  readonly shaft: readonly Point[];
}

/** How much wider the shaft looks where it leaves the picture: it comes towards the eye. */
const SHAFT_GROWTH = 1.7;

/**
 * Lays out the cue ball in front. The cue lies on the straight line from the stick's mark through
 * the tip's middle, which the dome puts farther out than the contact.
 * @param marks where the two lines meet the floor under the far balls, at `floorY`
 */
export function layOutNearBall(
  ball: Circle,
  tip: TipOnBall,
  marks: { readonly aimX: number; readonly stickX: number } | null,
  floorY: number,
  canvas: Canvas,
): NearBall {
  const out = ball.r * (1 + tip.domeRadii);
  const at = { x: ball.cx + tip.side * out, y: ball.cy - tip.height * out };
  const tipPx = (tip.widthRadii * ball.r) / 2;
  return {
    ball,
    limit: { ...ball, r: ball.r * tip.limit },
    tip: { cx: at.x, cy: at.y, r: tipPx },
    lines: marks && linesOf(ball, at, tipPx, marks, floorY, canvas),
  };
}

function linesOf(
  ball: Circle,
  tip: Point,
  tipPx: number,
  { aimX, stickX }: { readonly aimX: number; readonly stickX: number },
  floorY: number,
  canvas: Canvas,
): NearLines {
  const centre = { x: ball.cx, y: ball.cy };
  const aimMark = { x: aimX, y: floorY };
  const stickMark = { x: stickX, y: floorY };
  const aimRim = rimTowards(ball, centre, aimMark);
  return {
    aimOnBall: { from: centre, to: aimRim },
    aim: { from: aimRim, to: aimMark },
    cue: { from: rimTowards(ball, tip, stickMark), to: stickMark },
    shaft: shaftOf(stickMark, tip, tipPx, canvas),
  };
}

/** Where the way from a point within the ball to one outside leaves it. */
function rimTowards(ball: Circle, from: Point, to: Point): Point {
  const way = unit(from, to);
  const out = { x: from.x - ball.cx, y: from.y - ball.cy };
  const along = out.x * way.x + out.y * way.y;
  const within = ball.r ** 2 - (out.x ** 2 + out.y ** 2);
  const length = -along + Math.sqrt(Math.max(0, along ** 2 + within));
  return { x: from.x + way.x * length, y: from.y + way.y * length };
}

/** A taper about the line from the mark through the tip, on to below the picture. */
function shaftOf(mark: Point, tip: Point, tipPx: number, { heightPx }: Canvas): readonly Point[] {
  const way = unit(mark, tip);
  const buttPx = tipPx * SHAFT_GROWTH;
  const length = Math.max(0, heightPx + buttPx - tip.y) / Math.max(way.y, 1e-6);
  const butt = { x: tip.x + way.x * length, y: tip.y + way.y * length };
  const beside = (at: Point, by: number) => ({ x: at.x - way.y * by, y: at.y + way.x * by });
  return [beside(tip, tipPx), beside(butt, buttPx), beside(butt, -buttPx), beside(tip, -tipPx)];
}

function unit(from: Point, to: Point): Point {
  const [x, y] = [to.x - from.x, to.y - from.y];
  const length = Math.max(Math.hypot(x, y), 1e-9);
  return { x: x / length, y: y / length };
}
