import { type BallState, slipX, slipY } from '../ball/ball-state';
import { afterBed } from '../impacts/bed-impulse';
import type { Kit } from '../kit/kit';
import { length } from '../numerics/length';
import { flight } from './flight';
import type { Phase } from './phase';
import { roll } from './roll';
import { slide } from './slide';

/** Slower than this, m/s, a ball is at rest, and a slip is none: rounding, not motion. */
const STILL_MPS = 1e-10;

/**
 * The motion a ball falls into from a state, after the bed has answered any downward speed; null
 * when it lies still (spin about the vertical alone moves it nowhere).
 */
export function nextPhase(ball: BallState, startS: number, kit: Kit): Phase | null {
  const now = afterBed(ball, kit);
  if (now.zM > 0 || now.vz > 0) return flight(now, startS, kit);
  const radiusM = kit.ballRadiusM;
  if (length(slipX(now, radiusM), slipY(now, radiusM)) > STILL_MPS) {
    return slide(now, startS, kit);
  }
  return length(now.vx, now.vy) > STILL_MPS ? roll(now, startS, kit) : null;
}
