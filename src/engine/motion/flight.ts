import type { BallState, Pad } from '../ball/ball-state';
import { STANDARD_GRAVITY as g } from '../ball/gravity';
import type { Kit } from '../kit/kit';
import { length } from '../numerics/length';
import { newPhase, type Phase } from './phase';

/**
 * Free fall to the bed: the cloth does nothing, the spin keeps. A tilted bed is told as gravity's
 * pull along it. Air is left out. Source: Newtonian mechanics, exact.
 */
export function flight(ball: BallState, startS: number, kit: Kit): Phase {
  const phase = newPhase(ball);
  fillFlight(phase, startS, kit);
  return phase;
}

/** Makes a phase that of a ball that flies from its start. */
export function fillFlight(phase: Pad<Phase>, startS: number, kit: Kit): void {
  const { zM, vx, vy, vz } = phase.start;
  const freeX = g * kit.bedSlope.rightM_per_M;
  const freeY = g * kit.bedSlope.alongM_per_M;
  phase.motion = 'flying';
  phase.startS = startS;
  phase.durationS = (vz + Math.sqrt(vz * vz + 2 * g * zM)) / g;
  phase.linearX = vx;
  phase.linearY = vy;
  phase.linearZ = vz;
  phase.quadraticX = freeX / 2;
  phase.quadraticY = freeY / 2;
  phase.quadraticZ = -g / 2;
  phase.drag = null;
  phase.dragShare = 0;
  phase.freeX = freeX;
  phase.freeY = freeY;
  phase.accelerationBound = g + length(freeX, freeY);
  phase.spinDecay = 0;
  phase.radiusM = kit.ballRadiusM;
}
