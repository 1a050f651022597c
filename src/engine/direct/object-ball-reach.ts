import type { BallState } from '../ball/ball-state';
import type { Kit } from '../kit/kit';
import { travel } from '../motion/journey';

/** How far from its start a ball is when it comes to rest, as the crow flies, m. */
export function reachOf(ball: BallState, kit: Kit): number {
  const { end } = travel(ball, 0, kit, []);
  return Math.hypot(end.xM - ball.xM, end.yM - ball.yM);
}
