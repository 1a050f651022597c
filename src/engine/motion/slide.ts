import { type BallState, type Pad, slipX, slipY } from '../ball/ball-state';
import { STANDARD_GRAVITY as g } from '../ball/gravity';
import { PUSH_TO_ROLL, SLIP_TO_CENTRE, SURFACE_RESPONSE } from '../ball/inertia';
import type { Kit } from '../kit/kit';
import { length } from '../numerics/length';
import { coulombDrag } from './coulomb-drag';
import { newPhase, type Phase } from './phase';

/**
 * A ball slipping on the cloth: v̇ = −μ_s g u/|u| until the slip u is gone, 2|u|/(7 μ_s g) later.
 * On a level bed u keeps its direction and the path is a parabola. On a tilted one
 * u̇ = −(7/2) μ_s g u/|u| + g s, and v follows as v0 + (2/7)(u − u0) + (5/7) g s t: exact, see
 * coulomb-drag. Source: Shepard 1995 for the level bed; re-derived for the tilted one.
 */
export function slide(ball: BallState, startS: number, kit: Kit): Phase {
  const phase = newPhase(ball);
  fillSlide(phase, startS, kit);
  return phase;
}

/** Makes a phase that of a ball that slides from its start. */
export function fillSlide(phase: Pad<Phase>, startS: number, kit: Kit): void {
  const ball = phase.start;
  const ux = slipX(ball, kit.ballRadiusM);
  const uy = slipY(ball, kit.ballRadiusM);
  const grip = kit.slideFriction * g;
  const freeX = g * kit.bedSlope.rightM_per_M;
  const freeY = g * kit.bedSlope.alongM_per_M;
  const level = freeX === 0 && freeY === 0;
  const slip = length(ux, uy);
  const drag = level ? null : coulombDrag(ux, uy, SURFACE_RESPONSE * grip, freeX, freeY);
  phase.motion = 'sliding';
  phase.startS = startS;
  phase.durationS = drag?.durationS ?? slip / (SURFACE_RESPONSE * grip);
  phase.linearX = level ? ball.vx : ball.vx - SLIP_TO_CENTRE * ux;
  phase.linearY = level ? ball.vy : ball.vy - SLIP_TO_CENTRE * uy;
  phase.linearZ = 0;
  phase.quadraticX = level ? (-grip * ux) / slip / 2 : (PUSH_TO_ROLL * freeX) / 2;
  phase.quadraticY = level ? (-grip * uy) / slip / 2 : (PUSH_TO_ROLL * freeY) / 2;
  phase.quadraticZ = 0;
  phase.drag = drag;
  phase.dragShare = SLIP_TO_CENTRE;
  phase.freeX = freeX;
  phase.freeY = freeY;
  phase.accelerationBound = grip + length(freeX, freeY);
  phase.spinDecay = kit.spinDecayRadS2;
  phase.radiusM = kit.ballRadiusM;
}
