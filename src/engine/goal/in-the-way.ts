import type { Kit } from '../kit/kit';
import { placeOf } from '../lie/balls-of';
import { fromPiece, piecesApart, TOUCHING_M, touchingM } from '../lie/clearances';
import type { Position } from '../lie/position';
import type { PocketShape } from '../table/pocket-shape';
import type { Point } from '../table/point';
import type { TableShape } from '../table/table-shape';
import type { InTheWay } from './position-shot';

/** A ball's straight way from one place to another. */
export interface StraightWay {
  readonly mover: InTheWay['mover'];
  readonly from: Point;
  readonly to: Point;
}

/** An object ball's way to the mouth of its pocket. */
export function wayToMouth(
  from: Point,
  alongRad: number,
  { mouth, axis }: PocketShape,
): StraightWay {
  const beforeM = (mouth.x - from.x) * axis.x + (mouth.y - from.y) * axis.y;
  const [sin, cos] = [Math.sin(alongRad), Math.cos(alongRad)];
  const toMouthM = Math.max(0, beforeM / (sin * axis.x + cos * axis.y));
  const to = { x: from.x + toMouthM * sin, y: from.y + toMouthM * cos };
  return { mover: 'object', from, to };
}

/**
 * What a ball would hit on a straight way, the nearest first; a cushion last, and once.
 *
 * @param others every ball that may lie in the way, and neither the one that moves nor its aim
 */
export function onStraightWay(
  { mover, from, to }: StraightWay,
  others: Position,
  shape: TableShape,
  kit: Kit,
): readonly InTheWay[] {
  const leastM = 2 * kit.ballRadiusM - TOUCHING_M;
  const balls = others
    .map((ball) => ({ what: ball.name, ...fromPiece(placeOf(ball), from, to) }))
    .filter(({ apartM }) => apartM < leastM)
    .sort((a, b) => a.alongM - b.alongM)
    .map(({ what }): InTheWay => ({ mover, what }));
  const meets = meetsCushion(from, to, shape, touchingM(kit));
  return meets ? [...balls, { mover, what: 'jaw' }] : balls;
}

function meetsCushion(from: Point, to: Point, shape: TableShape, reachM: number): boolean {
  return shape.cushions.some(({ core, roundingM }) =>
    core.some(({ fromX, fromY, alongX, alongY, lengthM }) => {
      const start = { x: fromX, y: fromY };
      const end = { x: fromX + alongX * lengthM, y: fromY + alongY * lengthM };
      return piecesApart(from, to, start, end) < reachM + roundingM - TOUCHING_M;
    }),
  );
}
