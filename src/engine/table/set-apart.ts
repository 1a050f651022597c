import type { BallState } from '../ball/ball-state';
import type { LineOfCentres } from '../impacts/two-moving-balls';
import { TOUCHING_M } from '../motion/first-touch';

/** A direction in plan; a line of centres and a cushion's nearest place both have one. */
type Way = Pick<LineOfCentres, 'nx' | 'ny'>;

/** Takes back, half each, what two balls that are pressed together sank into each other. */
export function setApart(one: BallState, other: BallState, line: LineOfCentres, apartM: number) {
  const eachM = Math.max(0, apartM - line.distanceM) / 2;
  return [moved(one, line, -eachM), moved(other, line, eachM)] as const;
}

/** The ball a little farther along a way, m; where it is, if that is within touching. */
export function moved(ball: BallState, { nx, ny }: Way, byM: number): BallState {
  return Math.abs(byM) < TOUCHING_M
    ? ball
    : { ...ball, xM: ball.xM + byM * nx, yM: ball.yM + byM * ny };
}
