import type { TableShape } from '../engine/table/table-shape';
import type { Point } from './canvas';
import type { TableMap } from './table-map';

/** The shot of the question on a table, px. */
export interface QuestionView {
  readonly cueBall: Point;
  readonly ball: Point;
  /** The middle of the corner pocket's mouth. */
  readonly mouth: Point;
  readonly radiusPx: number;
}

/** From centre to centre. */
const TWO_FEET_M = 0.6096;
/** So small a drawing shows balls larger than they are. */
const LEAST_PX = 4;

/** A ball on the centre spot, the cue ball two feet behind it, straight into a far corner. */
export function layOutQuestion(
  shape: TableShape,
  map: TableMap,
  ballRadiusM: number,
): QuestionView | null {
  const corner = shape.pockets.find(({ name }) => name === 'far-right')?.mouth;
  if (corner === undefined) return null;
  const share = TWO_FEET_M / Math.hypot(corner.x, corner.y);
  return {
    cueBall: map.toPoint({ xM: -share * corner.x, yM: -share * corner.y }),
    ball: map.toPoint({ xM: 0, yM: 0 }),
    mouth: map.toPoint({ xM: corner.x, yM: corner.y }),
    radiusPx: Math.max(LEAST_PX, ballRadiusM * map.pxPerM),
  };
}
