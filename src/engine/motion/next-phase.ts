import { type BallState, type Pad, padOf, slipX, slipY } from '../ball/ball-state';
import { meetBed } from '../impacts/bed-impulse';
import type { Kit } from '../kit/kit';
import { length } from '../numerics/length';
import { fillFlight } from './flight';
import { newPhase, type Phase } from './phase';
import { fillRoll } from './roll';
import { fillSlide } from './slide';

/** Slower than this, m/s, a ball is at rest, and a slip is none: rounding, not motion. */
const STILL_MPS = 1e-10;

/**
 * The motion a ball falls into from a state, after the bed has answered any downward speed; null
 * when it lies still (spin about the vertical alone moves it nowhere).
 */
export function nextPhase(ball: BallState, startS: number, kit: Kit): Pad<Phase> | null {
  const start = padOf(ball);
  const phase = newPhase(start);
  return fillNext(phase, start, startS, kit) ? phase : null;
}

/**
 * Makes a phase that which a ball falls into, and lets the bed answer that ball first.
 *
 * @returns false where the ball lies still, and the phase is as it was
 */
export function fillNext(
  phase: Pad<Phase>,
  start: Pad<BallState>,
  startS: number,
  kit: Kit,
): boolean {
  meetBed(start, kit);
  const radiusM = kit.ballRadiusM;
  const isFlying = start.zM > 0 || start.vz > 0;
  const isSlipping = length(slipX(start, radiusM), slipY(start, radiusM)) > STILL_MPS;
  if (!isFlying && !isSlipping && !(length(start.vx, start.vy) > STILL_MPS)) return false;
  phase.start = start;
  if (isFlying) fillFlight(phase, startS, kit);
  else if (isSlipping) fillSlide(phase, startS, kit);
  else fillRoll(phase, startS, kit);
  return true;
}
