import type { BallState } from '../ball/ball-state';
import { PUSH_TO_ROLL, SLIP_TO_CENTRE } from '../ball/inertia';

/**
 * The velocity, m/s, with which a ball on a level bed will begin to roll, whatever slides and hops
 * lie between: (5/7) v + (2/7) R ω × ẑ. Neither flight nor friction at the lowest point changes the
 * angular momentum about the bed there. Source: Coriolis 1835 (from memory, re-derived); exact.
 */
export function rolledVelocity(
  ball: BallState,
  radiusM: number,
): { readonly vx: number; readonly vy: number } {
  return {
    vx: PUSH_TO_ROLL * ball.vx + SLIP_TO_CENTRE * radiusM * ball.wy,
    vy: PUSH_TO_ROLL * ball.vy - SLIP_TO_CENTRE * radiusM * ball.wx,
  };
}
