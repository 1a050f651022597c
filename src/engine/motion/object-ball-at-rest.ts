import { type Approach, firstTouch, newApproach } from './first-touch';
import type { Obstacle } from './obstacle';
import { newPlace, type Phase, type Place, placeAt } from './phase';

/** A ball at rest on the bed at (xM, yM), of the moving ball's own radius, as an obstacle. */
export function objectBallAtRest(xM: number, yM: number): Obstacle {
  const place = newPlace();
  const approach = newApproach();
  return {
    touchTime(phase) {
      const look = (timeS: number) => {
        placeAt(phase, timeS, place);
        approachBall(phase, place, xM, yM, approach);
      };
      const timeS = firstTouch(look, approach, phase.durationS);
      return approach.settled ? timeS : Number.POSITIVE_INFINITY;
    },
  };
}

/** The moving centre and the ball of radius 2R around the resting one. */
function approachBall(
  phase: Phase,
  place: Place,
  xM: number,
  yM: number,
  approach: Approach,
): void {
  const dx = xM - place.xM;
  const dy = yM - place.yM;
  const distanceM = Math.sqrt(dx * dx + dy * dy + place.zM * place.zM);
  approach.gapM = distanceM - 2 * phase.radiusM;
  approach.closing = (place.vx * dx + place.vy * dy - place.vz * place.zM) / distanceM;
  approach.pull =
    phase.drag === null
      ? (2 * (phase.quadraticX * dx + phase.quadraticY * dy - phase.quadraticZ * place.zM)) /
        distanceM
      : phase.accelerationBound;
}
