import { newPlace, type Phase, type Place, placeAt } from '../model/phase';
import type { Obstacle } from './obstacle';

/** A gap this small, m, is touching: a hundredth of an atom. */
const TOUCHING_M = 1e-12;
/**
 * Each step closes the gap as Newton's method does; a graze halves its root each time, and on a
 * tilted bed, where the pull is only known to be below a bound, a slow one takes off some per cent.
 */
const MAX_STEPS = 2000;

/**
 * A ball at rest on the bed at (xM, yM), of the moving ball's own radius, as an obstacle.
 *
 * First touch is found by conservative advancement: the moving ball must at least cross the plane
 * that touches the ball of radius 2R around the resting centre at the point nearest to it, and on
 * a parabola the moment of that is exact. Such a step never passes the touch and near it is
 * Newton's, from the safe side.
 */
export function objectBallAtRest(xM: number, yM: number): Obstacle {
  const place = newPlace();
  return { touchTime: (phase) => touchTime(phase, xM, yM, place) };
}

function touchTime(phase: Phase, xM: number, yM: number, place: Place): number {
  const reachM = 2 * phase.radiusM;
  let timeS = 0;
  for (let step = 0; step < MAX_STEPS; step++) {
    placeAt(phase, timeS, place);
    const dx = xM - place.xM;
    const dy = yM - place.yM;
    const distanceM = Math.sqrt(dx * dx + dy * dy + place.zM * place.zM);
    const gapM = distanceM - reachM;
    const closing = (place.vx * dx + place.vy * dy - place.vz * place.zM) / distanceM;
    if (gapM <= TOUCHING_M && closing > 0) return timeS;
    const pull =
      phase.drag === null
        ? (2 * (phase.quadraticX * dx + phase.quadraticY * dy - phase.quadraticZ * place.zM)) /
          distanceM
        : phase.accelerationBound;
    timeS += timeToCross(Math.max(gapM, TOUCHING_M), closing, pull);
    if (!(timeS <= phase.durationS)) break;
  }
  return Number.POSITIVE_INFINITY;
}

/** Time to cover a gap from a speed towards it under a constant pull towards it; Infinity: never. */
function timeToCross(gapM: number, speed: number, pull: number): number {
  const square = speed * speed + 2 * pull * gapM;
  if (square < 0) return Number.POSITIVE_INFINITY;
  const root = Math.sqrt(square);
  if (speed > 0) return (2 * gapM) / (speed + root);
  return pull > 0 ? (root - speed) / pull : Number.POSITIVE_INFINITY;
}
