import type { BallState } from '../ball/ball-state';
import { isLevel, type Kit } from '../kit/kit';
import { travel } from '../motion/journey';
import { rolledVelocity } from '../motion/rolled-velocity';
import { bearing, wrapped } from '../numerics/angle';
import { length } from '../numerics/length';
import type { Contact } from './contact';
import type { Layout } from './layout';
import { axisShift, pivotBridge } from './pivot-bridge';
import type { AimAnswer, Arrival, Heading, Shot } from './shot';

/** Slower than this, m/s, a ball stands still and has no direction. */
const STILL_MPS = 1e-9;

/** A velocity in polar form. */
function headingOf(ball: Pick<BallState, 'vx' | 'vy'>): Heading {
  const speedMps = length(ball.vx, ball.vy);
  return { speedMps, directionRad: speedMps > STILL_MPS ? bearing(ball.vx, ball.vy) : null };
}

/**
 * Everything the player may want to know about a stroke that makes contact.
 *
 * The parts split the aim on this one path: with λ the direction in which the cue ball leaves the
 * tip and κ the bearing of its centre at contact, squirt is aim − λ, swerve λ − κ and throw κ.
 */
export function describeAnswer(
  shot: Shot,
  layout: Layout,
  kit: Kit,
  aimRad: number,
  leaving: BallState,
  contact: Contact,
  otherAimsRad: readonly number[],
): AimAnswer {
  const leavingRad = bearing(leaving.vx, leaving.vy);
  const contactRad = bearing(contact.cueBall.xM, contact.cueBall.yM);
  const shiftM = axisShift(shot.side, kit.ballRadiusM, kit.tipRadiusM);
  const tan = Math.tan(aimRad);
  const stickM = shiftM / Math.cos(aimRad);
  const toObjectM = layout.objectYM * tan - layout.objectXM;
  return {
    ok: true,
    aimRad,
    aimOffsetM: shot.distanceM * tan,
    stickOffsetM: stickM + shot.distanceM * tan,
    aimOnObjectBallM: toObjectM,
    stickOnObjectBallM: stickM + toObjectM,
    parts: {
      squirtRad: aimRad - leavingRad,
      swerveRad: leavingRad - contactRad,
      throwRad: contactRad,
    },
    pivotBridgeM: pivotBridge(aimRad, shiftM, kit.ballRadiusM),
    arrival: arrivalOf(contact),
    objectBall: headingOf(contact.objectBall),
    cueBall: {
      ...headingOf(contact.after.cueBall),
      rollingDirectionRad: rollingDirection(contact, kit),
    },
    otherAimsRad,
  };
}

function arrivalOf(contact: Contact): Arrival {
  const { cueBall, nx, ny } = contact;
  const directionRad = bearing(cueBall.vx, cueBall.vy);
  return {
    speedMps: length(cueBall.vx, cueBall.vy),
    directionRad,
    cutRad: wrapped(bearing(nx, ny) - directionRad),
    sideSpinRadS: cueBall.wz,
    motion: contact.motion,
    heightM: cueBall.zM,
    timeS: contact.timeS,
  };
}

/** The cue ball's direction as it begins to roll; null where it comes to rest without. */
function rollingDirection(contact: Contact, kit: Kit): number | null {
  const { cueBall } = contact.after;
  if (isLevel(kit)) return headingOf(rolledVelocity(cueBall, kit.ballRadiusM)).directionRad;
  const { phases } = travel(cueBall, contact.timeS, kit, []);
  const roll = phases.find((phase) => phase.motion === 'rolling');
  return roll === undefined ? null : headingOf(roll.start).directionRad;
}
