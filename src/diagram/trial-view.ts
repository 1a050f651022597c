import { DIAMONDS_ACROSS, DIAMONDS_ALONG } from '../engine/table/diamonds';
import type { Canvas, Circle, Label, Point } from './canvas';
import type { Segment } from './overhead-view';
import { RAIL_SHARE, railDiamonds } from './table-diamonds';
import type { BallKind, TableLine, TableSpot, TrialScene } from './trial-scene';

export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A graduation of the rule on the far rail. */
export interface RuleTick {
  readonly x: number;
  /** From the middle diamond, right +. */
  readonly diamonds: number;
  readonly isWhole: boolean;
}

/** A trial's table from above, the break end below. Lengths in px. */
export interface TrialView {
  /** The cloth in view, from nose to nose across. */
  readonly bed: Rect;
  /** Rails and cloth together. */
  readonly frame: Rect;
  readonly noses: readonly Segment[];
  readonly diamonds: readonly Point[];
  /** Figures beside the diamonds that are to be counted. */
  readonly counts: readonly { readonly text: string; readonly label: Label }[];
  readonly balls: readonly { readonly kind: BallKind; readonly circle: Circle }[];
  readonly aim: Segment | null;
  readonly path: Segment | null;
  readonly reading: Segment | null;
  readonly mark: Segment | null;
  readonly coins: readonly Circle[];
  readonly rule: readonly RuleTick[];
  /** Under the rail the player stands at; null where that is out of view. */
  readonly nearLabel: Label | null;
  /** Over the far rail; null where that is out of view. */
  readonly farLabel: Label | null;
}

/** Balls smaller than this would vanish; they are then drawn larger than true, px. */
const MIN_BALL_PX = 3.5;
/** Clear height for a line of text. */
const TEXT_LINE = 1.45;
/** Clear width on either side, for a figure, in heights of text. */
const SIDE_LINE = 1.1;
const RULE_STEPS_PER_DIAMOND = 4;

/** Lays the scene out as large as the canvas allows, with the rails that are in view. */
export function layOutTrialView(scene: TrialScene, canvas: Canvas): TrialView {
  const { lengthM, view } = scene;
  const showsNear = view.fromYM <= 0;
  const showsFar = view.toYM >= lengthM;
  const railM = RAIL_SHARE * lengthM;
  const linePx = canvas.textPx * TEXT_LINE;
  const top = showsFar ? linePx : 2;
  const bottom = showsNear ? linePx : 2;
  const wideM = lengthM / 2 + 2 * railM;
  const highM = view.toYM - view.fromYM + railM * (Number(showsNear) + Number(showsFar));
  const roomPx = Math.max(24, canvas.heightPx - top - bottom);
  const acrossPx = Math.max(24, canvas.widthPx - 2 * SIDE_LINE * canvas.textPx);
  const pxPerM = Math.max(1, Math.min(acrossPx / wideM, roomPx / highM));
  const middleX = canvas.widthPx / 2;
  const topY = top + (roomPx - highM * pxPerM) / 2;
  const farY = topY + (showsFar ? railM * pxPerM : 0);
  const toPoint = ({ xM, yM }: TableSpot): Point => ({
    x: middleX + xM * pxPerM,
    y: farY + (view.toYM - yM) * pxPerM,
  });
  const corner = toPoint({ xM: -lengthM / 4, yM: view.toYM });
  const bed = {
    x: corner.x,
    y: corner.y,
    width: (lengthM / 2) * pxPerM,
    height: (view.toYM - view.fromYM) * pxPerM,
  };
  const railPx = railM * pxPerM;
  const frame = { x: bed.x - railPx, y: topY, width: wideM * pxPerM, height: highM * pxPerM };
  const toSegment = (line: TableLine | null): Segment | null =>
    line && { from: toPoint(line.from), to: toPoint(line.to) };
  const ballPx = Math.max(MIN_BALL_PX, scene.ballRadiusM * pxPerM);
  return {
    bed,
    frame,
    noses: nosesOf(bed, showsNear, showsFar),
    diamonds: diamondsOf(scene, railM).map(toPoint),
    counts: countsOf(scene, frame, toPoint, canvas.textPx),
    balls: scene.balls.map(({ kind, at }) => {
      const { x, y } = toPoint(at);
      return { kind, circle: { cx: x, cy: y, r: ballPx } };
    }),
    aim: toSegment(scene.aim && cutTo(scene.aim, view.fromYM)),
    path: toSegment(scene.path),
    reading: toSegment(scene.reading),
    mark: toSegment(scene.mark),
    coins: scene.coins.map((spot) => {
      const { x, y } = toPoint(spot);
      return { cx: x + railPx / 2, cy: y, r: Math.min(ballPx * 0.8, railPx * 0.35) };
    }),
    rule: scene.hasRule ? ruleOf(scene, toPoint) : [],
    nearLabel: showsNear
      ? { x: middleX, y: topY + highM * pxPerM + canvas.textPx * 1.1, anchor: 'middle' }
      : null,
    farLabel: showsFar ? { x: middleX, y: topY - canvas.textPx * 0.4, anchor: 'middle' } : null,
  };
}

/** A line whose beginning is out of view begins at the edge of the view. */
function cutTo({ from, to }: TableLine, fromYM: number): TableLine {
  if (from.yM >= fromYM || to.yM <= from.yM) return { from, to };
  const share = (fromYM - from.yM) / (to.yM - from.yM);
  return { from: { xM: from.xM + share * (to.xM - from.xM), yM: fromYM }, to };
}

function nosesOf({ x, y, width, height }: Rect, near: boolean, far: boolean): Segment[] {
  const right = x + width;
  const below = y + height;
  const edge = (x1: number, y1: number, x2: number, y2: number): Segment => ({
    from: { x: x1, y: y1 },
    to: { x: x2, y: y2 },
  });
  return [
    edge(x, y, x, below),
    edge(right, y, right, below),
    ...(far ? [edge(x, y, right, y)] : []),
    ...(near ? [edge(x, below, right, below)] : []),
  ];
}

/** On the middle of each rail in view. */
function diamondsOf({ lengthM, view }: TrialScene, railM: number): TableSpot[] {
  const fromYM = view.fromYM <= 0 ? -railM : view.fromYM;
  const toYM = view.toYM >= lengthM ? lengthM + railM : view.toYM;
  return railDiamonds(lengthM, lengthM / 2, railM / 2)
    .map(({ xM, yM }) => ({ xM, yM: yM + lengthM / 2 }))
    .filter(({ yM }) => yM >= fromYM && yM <= toYM);
}

function countsOf(
  { lengthM, countTo, view }: TrialScene,
  frame: Rect,
  toPoint: (spot: TableSpot) => Point,
  textPx: number,
) {
  const counts: { text: string; label: Label }[] = [];
  for (let i = 1; i <= Math.min(countTo, DIAMONDS_ALONG - 1); i++) {
    const yM = (i / DIAMONDS_ALONG) * lengthM;
    if (yM < view.fromYM || yM > view.toYM) continue;
    const y = toPoint({ xM: 0, yM }).y + textPx * 0.35;
    counts.push({ text: `${i}`, label: { x: frame.x - textPx * 0.4, y, anchor: 'end' } });
  }
  return counts;
}

function ruleOf({ lengthM }: TrialScene, toPoint: (spot: TableSpot) => Point): RuleTick[] {
  const diamondM = lengthM / DIAMONDS_ALONG;
  const most = (DIAMONDS_ACROSS / 2) * RULE_STEPS_PER_DIAMOND - 1;
  return Array.from({ length: 2 * most + 1 }, (_, i) => {
    const diamonds = (i - most) / RULE_STEPS_PER_DIAMOND;
    const { x } = toPoint({ xM: diamonds * diamondM, yM: lengthM });
    return { x, diamonds, isWhole: Number.isInteger(diamonds) };
  });
}
