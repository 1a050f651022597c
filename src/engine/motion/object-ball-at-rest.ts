import { length } from '../numerics/length';
import { type Approach, firstTouch, newApproach } from './first-touch';
import type { Obstacle } from './obstacle';
import { newPlace, type Phase, type Place, placeAt } from './phase';
import type { Watch } from './run';

/** A ball at rest on the bed at (xM, yM), of the moving ball's own radius, as an obstacle. */
export function objectBallAtRest(xM: number, yM: number): Obstacle & Watch {
  const place = newPlace();
  const approach = newApproach();
  return {
    clearM: (fromXM, fromYM, radiusM) => length(xM - fromXM, yM - fromYM) - 2 * radiusM,
    touchTime(phase) {
      if (isBeyondReach(phase, xM, yM)) return Number.POSITIVE_INFINITY;
      const look = (timeS: number) => {
        placeAt(phase, timeS, place);
        approachBall(phase, place, xM, yM, approach);
      };
      const timeS = firstTouch(look, approach, phase.durationS);
      return approach.settled ? timeS : Number.POSITIVE_INFINITY;
    },
  };
}

/** Whether the phase ends before the moving ball can have come so far, whichever way it goes. */
function isBeyondReach(phase: Phase, xM: number, yM: number): boolean {
  const { start, durationS, radiusM, accelerationBound } = phase;
  const { vx, vy, vz, zM } = start;
  const speedMps = Math.sqrt(vx * vx + vy * vy + vz * vz);
  const reachM = (speedMps + (accelerationBound * durationS) / 2) * durationS + 2 * radiusM;
  const [dx, dy] = [xM - start.xM, yM - start.yM];
  return dx * dx + dy * dy + zM * zM > reachM * reachM;
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
