import { travel } from '../events/journey';
import type { BallState } from '../model/ball-state';
import type { Kit } from '../model/kit';

/** How far from its start a ball is when it comes to rest, as the crow flies, m. */
export function reachOf(ball: BallState, kit: Kit): number {
  const { end } = travel(ball, 0, kit, []);
  return Math.hypot(end.xM - ball.xM, end.yM - ball.yM);
}
