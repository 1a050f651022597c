import type { AimAnswer } from '../engine/direct/shot';

/**
 * How far the object ball leaves off the line of centres, rad, right +: throw as it is seen. What
 * throw adds to the aim is far less, for the contact only has to move a little to make up for it.
 * Null where the object ball does not move.
 */
export function thrownAngleRad({ arrival, objectBall }: AimAnswer): number | null {
  if (objectBall.directionRad === null) return null;
  return objectBall.directionRad - (arrival.directionRad + arrival.cutRad);
}
