import type { BallState, Pad } from '../ball/ball-state';
import { STANDARD_GRAVITY as g } from '../ball/gravity';
import { PUSH_TO_ROLL } from '../ball/inertia';
import type { Kit } from '../kit/kit';
import { length } from '../numerics/length';
import { coulombDrag } from './coulomb-drag';
import { newPhase, type Phase } from './phase';

/** The push, m/s², of a tilted bed on a rolling ball, right and along. */
function rollingPush(kit: Kit): readonly [number, number] {
  const { rightM_per_M, alongM_per_M } = kit.bedSlope;
  return [PUSH_TO_ROLL * g * rightM_per_M, PUSH_TO_ROLL * g * alongM_per_M];
}

/**
 * Share of the cloth's hold that the tilt's pull may take. Nearer to all of it a ball would roll for
 * a day and for miles, and the figures of it would be the rounding of a small difference.
 */
const MOST_PULL = 0.9999;

/** Whether a ball rolling on this bed comes to rest: the tilt must pull less than the cloth holds. */
export function comesToRest(kit: Kit): boolean {
  const [pushX, pushY] = rollingPush(kit);
  return length(pushX, pushY) <= MOST_PULL * kit.rollFriction * g;
}

/**
 * A ball rolling without slip, slowed by μ_r g against its velocity and pushed by (5/7) g s down a
 * tilted bed. Level, it goes straight; tilted, it bends: exact, see coulomb-drag. Some authors call
 * 7/5 of this μ_r the friction. Source: rolling resistance as a constant deceleration, as in the
 * literature on the sport (from memory); the 5/7 is exact.
 *
 * @throws RangeError unless the ball {@link comesToRest}
 */
export function roll(ball: BallState, startS: number, kit: Kit): Phase {
  const phase = newPhase(ball);
  fillRoll(phase, startS, kit);
  return phase;
}

/** Makes a phase that of a ball that rolls from its start. */
export function fillRoll(phase: Pad<Phase>, startS: number, kit: Kit): void {
  const { vx, vy } = phase.start;
  const slow = kit.rollFriction * g;
  const [pushX, pushY] = rollingPush(kit);
  const level = pushX === 0 && pushY === 0;
  const speed = length(vx, vy);
  const drag = level ? null : coulombDrag(vx, vy, slow, pushX, pushY);
  phase.motion = 'rolling';
  phase.startS = startS;
  phase.durationS = drag?.durationS ?? speed / slow;
  phase.linearX = level ? vx : 0;
  phase.linearY = level ? vy : 0;
  phase.linearZ = 0;
  phase.quadraticX = level ? (-slow * vx) / speed / 2 : 0;
  phase.quadraticY = level ? (-slow * vy) / speed / 2 : 0;
  phase.quadraticZ = 0;
  phase.drag = drag;
  phase.dragShare = 1;
  phase.freeX = pushX;
  phase.freeY = pushY;
  phase.accelerationBound = slow + length(pushX, pushY);
  phase.spinDecay = kit.spinDecayRadS2;
  phase.radiusM = kit.ballRadiusM;
}
