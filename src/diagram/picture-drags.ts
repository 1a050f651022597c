import { heldWithin } from '../engine/numerics/range';
import { type FaceMarks, snappedContact, type TipContact } from './tip-face';

/** The thinnest cut that a drag makes, rad: at a quarter turn the balls only graze. */
const THINNEST_RAD = (89 * Math.PI) / 180;

/**
 * The cut with the ghost ball so far beside the object ball.
 * @param ghostM of the ghost ball's centre from the object ball's, square to the straight line, right +
 * @returns rad, + sends the object ball right; as thin as a cut can be for what lies farther out
 */
export function cutOfGhost(ghostM: number, ballRadiusM: number): number {
  const sine = heldWithin({ min: -1, max: 1 }, -ghostM / (2 * ballRadiusM));
  return heldWithin({ min: -THINNEST_RAD, max: THINNEST_RAD }, Math.asin(sine));
}

/**
 * The contact after the tip has been dragged over the ball, on a marked one when close to it.
 * @param radiusPx of the circle on which the tip's middle moves for a whole radius of side
 */
export function draggedContact(
  from: TipContact,
  rightPx: number,
  downPx: number,
  radiusPx: number,
  marks: FaceMarks,
): TipContact {
  const free = { side: from.side + rightPx / radiusPx, height: from.height - downPx / radiusPx };
  const out = Math.hypot(free.side, free.height);
  const shrink = Math.min(1, marks.limit / Math.max(out, 1e-9));
  return snappedContact({ side: free.side * shrink, height: free.height * shrink }, marks);
}
