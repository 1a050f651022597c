import type { PositionShot } from '../engine/goal/position-shot';
import type { NamedBall } from '../engine/lie/position';
import type { PocketName } from '../engine/table/pocket-shape';
import type { TableShape } from '../engine/table/table-shape';
import type { Point } from './canvas';
import type { Segment } from './overhead-view';
import type { TableMap } from './table-map';

/** A shot drawn over its table, px. */
export interface ShotLines {
  readonly ghost: Point;
  /** From the cue ball to the ghost ball. */
  readonly straight: Segment;
  /** From the object ball to the middle of the pocket's mouth. */
  readonly target: Segment;
  /** Where to point the cue, as far as the ghost ball lies; null while no way is chosen. */
  readonly aim: Segment | null;
  /** What would be hit on the way. */
  readonly inTheWay: readonly Point[];
}

export interface ShotOnTable {
  readonly shot: PositionShot;
  readonly balls: readonly NamedBall[];
  readonly ball: number;
  readonly pocket: PocketName;
  /** Of the way chosen, right + of the straight line, rad. */
  readonly aimRad: number | null;
}

/** Null where the balls or the pocket that the shot is about are not there. */
export function layOutShot(
  { shot, balls, ball, pocket, aimRad }: ShotOnTable,
  shape: TableShape,
  map: TableMap,
): ShotLines | null {
  const spotOf = (name: NamedBall['name']) => balls.find((one) => one.name === name);
  const cue = spotOf('cue');
  const object = spotOf(ball);
  const mouth = shape.pockets.find(({ name }) => name === pocket)?.mouth;
  if (!cue || !object || !mouth) return null;
  const mouthSpot = { xM: mouth.x, yM: mouth.y };
  const cuePoint = map.toPoint(cue);
  const ghost = map.toPoint(shot.ghost);
  return {
    ghost,
    straight: { from: cuePoint, to: ghost },
    target: { from: map.toPoint(object), to: map.toPoint(mouthSpot) },
    aim: aimRad === null ? null : { from: cuePoint, to: map.toPoint(aimSpot(cue, shot, aimRad)) },
    inTheWay: shot.inTheWay.flatMap(({ what }) => {
      const spot = what === 'jaw' ? mouthSpot : spotOf(what);
      return spot ? [map.toPoint(spot)] : [];
    }),
  };
}

function aimSpot({ xM, yM }: NamedBall, { distanceM, headingRad }: PositionShot, aimRad: number) {
  return {
    xM: xM + distanceM * Math.sin(headingRad + aimRad),
    yM: yM + distanceM * Math.cos(headingRad + aimRad),
  };
}
