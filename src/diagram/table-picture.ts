import type { BallName, NamedBall } from '../engine/lie/position';
import type { PocketName } from '../engine/table/pocket-shape';
import type { Circle, Point } from './canvas';
import { POCKETS_UPRIGHT } from './pockets-upright';
import { layOutTable } from './table-map';
import { pathThrough } from './table-rails';
import type { Rect } from './trial-view';

/** What is drawn: balls on a table, and what is played there, if anything is chosen. */
export interface Pictured {
  readonly lengthM: number;
  readonly widthM: number;
  readonly balls: readonly NamedBall[];
  readonly goal: { readonly ball: BallName | null; readonly pocket: PocketName | null };
}

/** A position small enough to stand beside its name, px. */
export interface TablePicture {
  readonly frame: Rect;
  readonly bed: Rect;
  readonly holes: readonly Circle[];
  readonly balls: readonly (Circle & { readonly isCue: boolean })[];
  /** From the cue ball over the ball to be played to its pocket; empty where none are chosen. */
  readonly path: string;
}

/** Drawn as dots: to true size they could not be seen. */
const BALL_PX = 2.6;
const HOLE_PX = 2.4;

/** The table on its side, the break end on the left, on a canvas without text. */
export function layOutPicture(
  { lengthM, widthM, balls, goal }: Pictured,
  canvas: { readonly widthPx: number; readonly heightPx: number },
): TablePicture {
  const map = layOutTable({ lengthM, widthM }, { ...canvas, textPx: 0 });
  const pocketAt = (name: PocketName) => map.toPoint(cornerOf(name, lengthM, widthM));
  const placeOf = (name: BallName | null): Point[] =>
    balls.filter((ball) => ball.name === name).map(map.toPoint);
  const path = [...placeOf('cue'), ...placeOf(goal.ball)];
  return {
    frame: map.frame,
    bed: map.bed,
    holes: POCKETS_UPRIGHT.map((name) => circleAt(pocketAt(name), HOLE_PX)),
    balls: balls.map((ball) => ({
      ...circleAt(map.toPoint(ball), BALL_PX),
      isCue: ball.name === 'cue',
    })),
    path:
      path.length === 2 && goal.pocket !== null
        ? pathThrough([...path, pocketAt(goal.pocket)])
        : '',
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
