import type { WayKind } from '../engine/goal/goal';
import type { BallName, NamedBall } from '../engine/lie/position';
import type { Stroke } from '../engine/stroke/stroke';
import type { PocketName } from '../engine/table/pocket-shape';
import type { Circle, Point } from './canvas';
import { POCKETS_UPRIGHT } from './pockets-upright';
import { railPoint } from './rail-point';
import { layOutTable } from './table-map';
import { pathThrough } from './table-rails';
import type { Rect } from './trial-view';

/** What is drawn: balls on a table, and what is played there, if anything is chosen. */
export interface Pictured {
  readonly lengthM: number;
  readonly widthM: number;
  readonly balls: readonly NamedBall[];
  readonly goal: { readonly ball: BallName | null; readonly pocket: PocketName | null };
  /** The way it is to be played, if one is kept with it. */
  readonly drill?: { readonly kind: WayKind; readonly stroke: Stroke } | null;
}

/** A position small enough to stand beside its name, px. */
export interface TablePicture {
  readonly frame: Rect;
  readonly bed: Rect;
  readonly holes: readonly Circle[];
  readonly balls: readonly (Circle & { readonly isCue: boolean })[];
  /** From the cue ball by the ball to its pocket, or to where the cue points; empty where none is chosen. */
  readonly path: string;
}

/** Drawn as dots: to true size they could not be seen. */
const BALL_PX = 2.6;
const HOLE_PX = 2.4;

/** The table on its side, the break end on the left, on a canvas without text. */
export function layOutPicture(
  { lengthM, widthM, balls, goal, drill }: Pictured,
  canvas: { readonly widthPx: number; readonly heightPx: number },
): TablePicture {
  const map = layOutTable({ lengthM, widthM }, { ...canvas, textPx: 0 });
  const pocketAt = (name: PocketName) => map.toPoint(cornerOf(name, lengthM, widthM));
  const placeOf = (name: BallName | null): Point[] =>
    balls.filter((ball) => ball.name === name).map(map.toPoint);
  const aimedAt = (): Point[] => {
    const [cue] = balls.filter(({ name }) => name === 'cue');
    if (!cue) return [];
    if (drill && drill.kind !== 'direct') {
      return [cue, railPoint(cue, drill.stroke.aimRad, { lengthM, widthM }).spot].map(map.toPoint);
    }
    const ball = placeOf(goal.ball);
    const pocket = goal.pocket === null ? [] : [pocketAt(goal.pocket)];
    return ball.length > 0 && pocket.length > 0 ? [map.toPoint(cue), ...ball, ...pocket] : [];
  };
  const path = aimedAt();
  return {
    frame: map.frame,
    bed: map.bed,
    holes: POCKETS_UPRIGHT.map((name) => circleAt(pocketAt(name), HOLE_PX)),
    balls: balls.map((ball) => ({
      ...circleAt(map.toPoint(ball), BALL_PX),
      isCue: ball.name === 'cue',
    })),
    path: path.length > 0 ? pathThrough(path) : '',
  };
}

function circleAt({ x, y }: Point, r: number): Circle {
  return { cx: x, cy: y, r };
}

/** Where a pocket lies, to the width of a nose. */
function cornerOf(name: PocketName, lengthM: number, widthM: number) {
  const [end, side] = name.split('-');
  const along = end === 'far' ? 0.5 : end === 'near' ? -0.5 : 0;
  return { xM: (side === 'right' ? 0.5 : -0.5) * widthM, yM: along * lengthM };
}
