import type { BallState } from '../ball/ball-state';
import { meet } from '../direct/contact';
import { layoutOf } from '../direct/layout';
import { SPEED_FROM_MPS } from '../stroke/speed-bands';
import type { Stroke } from '../stroke/stroke';
import type { OptionQuestion } from './solve-option';

/** How the cue ball turns as it meets the object ball, or would: that decides where it goes next. */
export type ArrivalSpin = 'roll' | 'stun' | 'draw';

/** A way to play a shot, as players tell ways apart. */
export interface Way {
  /** Inside is towards the way the object ball is cut; on a straight shot there is left and right. */
  readonly side: 'none' | 'inside' | 'outside' | 'left' | 'right';
  readonly arrival: ArrivalSpin;
  /** Struck low, to arrive with most of that worn off on the cloth. */
  readonly isDrag: boolean;
  /** In three: a touch is soft too, and power and a break are firm. */
  readonly speed: 'soft' | 'medium' | 'firm';
  readonly isRaised: boolean;
}

/** Less side than this is none to speak of, as a fraction of R. */
const SOME_SIDE = 0.08;
/** Above the most level cue that the position allows, rad. */
const RAISED_BY_RAD = 0.05;
/** Struck lower than this, as a fraction of R, a ball has backspin to lose. */
const STRUCK_LOW = -0.15;

/** @param leastElevationRad the most level cue that the position allows */
export function wayOf(
  question: Pick<OptionQuestion, 'distanceM' | 'cutRad' | 'kit'>,
  stroke: Stroke,
  leastElevationRad: number,
): Way {
  const { kit, cutRad } = question;
  const { contact } = meet(stroke, layoutOf(question, kit.ballRadiusM), kit);
  const arrival = contact === null ? 'stun' : arrivalSpin(contact.cueBall, kit.ballRadiusM);
  return {
    side: sideOf(stroke.side, cutRad),
    arrival,
    isDrag: isDragged(stroke.height, arrival),
    speed: speedOf(stroke.speedMps),
    isRaised: isMuchRaised(stroke.elevationRad, leastElevationRad),
  };
}

/** Whether a ball struck so has backspin that is worn off by the time it arrives. */
export function isDragged(height: number, arrival: ArrivalSpin): boolean {
  return height < STRUCK_LOW && arrival !== 'draw';
}

/** Whether a cue is raised by more than it must be. */
export function isMuchRaised(elevationRad: number, leastElevationRad: number): boolean {
  return elevationRad > leastElevationRad + RAISED_BY_RAD;
}

/** Whether a contact has no side to speak of. */
export function sideless(side: number): boolean {
  return Math.abs(side) < SOME_SIDE;
}

function sideOf(side: number, cutRad: number): Way['side'] {
  if (sideless(side)) return 'none';
  if (cutRad === 0) return side > 0 ? 'right' : 'left';
  return side > 0 === cutRad > 0 ? 'inside' : 'outside';
}

export function speedOf(speedMps: number): Way['speed'] {
  if (speedMps < SPEED_FROM_MPS.medium) return 'soft';
  return speedMps < SPEED_FROM_MPS.firm ? 'medium' : 'firm';
}

/** Of a full roll: more than this is roll, less than its negative is draw. */
const SOME_ROLL = 0.35;

/** By the spin about the axis square to the motion, as a share of what rolling has. */
export function arrivalSpin({ vx, vy, wx, wy }: BallState, ballRadiusM: number): ArrivalSpin {
  const roll = (ballRadiusM * (wy * vx - wx * vy)) / (vx * vx + vy * vy);
  if (roll > SOME_ROLL) return 'roll';
  return roll < -SOME_ROLL ? 'draw' : 'stun';
}
