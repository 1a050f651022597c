import type { BallState } from '../ball/ball-state';
import { STANDARD_GRAVITY as g } from '../ball/gravity';
import type { Kit } from '../kit/kit';
import { length } from '../numerics/length';
import type { Phase } from './phase';

/**
 * Free fall to the bed: the cloth does nothing, the spin keeps. A tilted bed is told as gravity's
 * pull along it. Air is left out. Source: Newtonian mechanics, exact.
 */
export function flight(ball: BallState, startS: number, kit: Kit): Phase {
  const freeX = g * kit.bedSlope.rightM_per_M;
  const freeY = g * kit.bedSlope.alongM_per_M;
  return {
    motion: 'flying',
    start: ball,
    startS,
    durationS: (ball.vz + Math.sqrt(ball.vz * ball.vz + 2 * g * ball.zM)) / g,
    linearX: ball.vx,
    linearY: ball.vy,
    linearZ: ball.vz,
    quadraticX: freeX / 2,
    quadraticY: freeY / 2,
    quadraticZ: -g / 2,
    drag: null,
    dragShare: 0,
    freeX,
    freeY,
    accelerationBound: g + length(freeX, freeY),
    spinDecay: 0,
    radiusM: kit.ballRadiusM,
  };
}
