import type { BallState } from '../ball/ball-state';
import { SPIN_SHARE } from '../ball/inertia';
import type { Kit } from '../kit/kit';
import { length } from '../numerics/length';
import type { Stroke } from '../stroke/stroke';

/**
 * The angle by which the ball leaves the cue's line, away from the contact offset, rad.
 *
 * A chalked tip does not slip, and the cue's front end moves aside with the ball's surface as a
 * free mass m_e; conserving sideways momentum gives
 * tan α = (5/2) β √(1−β²) / (1 + m/m_e + (5/2)(1−β²)), at any speed.
 * Source: Shepard 2001; Cross, Am. J. Phys. 76:205 (2008) (form from memory, re-derived).
 *
 * @param offset β, the contact's distance from the centre as a fraction of R, 0 to 1
 * @param massRatio m/m_e; Infinity for a cue without end mass
 */
export function squirtAngle(offset: number, massRatio: number): number {
  return Math.atan(squirtTangent(offset, massRatio));
}

function squirtTangent(offset: number, massRatio: number): number {
  const depth2 = 1 - offset * offset;
  return (SPIN_SHARE * offset * Math.sqrt(depth2)) / (1 + massRatio + SPIN_SHARE * depth2);
}

/**
 * The cue ball, at the origin, as it leaves the tip and before the cloth acts: the impulse J turned
 * by the squirt angle within the plane of cue and contact, and ω = r × J / I.
 */
export function strike(stroke: Stroke, kit: Kit): BallState {
  const { side, height, elevationRad } = stroke;
  const sinAim = Math.sin(stroke.aimRad);
  const cosAim = Math.cos(stroke.aimRad);
  const sinUp = Math.sin(elevationRad);
  const cosUp = Math.cos(elevationRad);
  const offset = length(side, height);
  const depth = Math.sqrt(Math.max(0, 1 - offset * offset));
  const squirt = squirtTangent(offset, kit.massRatio);
  // Along the cue, to the right of it and up its face: the impulse's unit components.
  const ahead = 1 / Math.sqrt(1 + squirt * squirt);
  const aside = offset > 0 ? (-squirt * ahead * side) / offset : 0;
  const upward = offset > 0 ? (-squirt * ahead * height) / offset : 0;
  const level = ahead * cosUp + upward * sinUp;
  const impulse = stroke.speedMps / length(level, aside);
  // r × J in the cue's own frame (right, ahead, up), r = R (side, −depth, height).
  const perRadius = (SPIN_SHARE * impulse) / kit.ballRadiusM;
  const spinRight = perRadius * (-depth * upward - height * ahead);
  const spinAhead = perRadius * (height * aside - side * upward);
  const spinUp = perRadius * (side * ahead + depth * aside);
  const spinLevel = spinAhead * cosUp + spinUp * sinUp;
  return {
    xM: 0,
    yM: 0,
    zM: 0,
    vx: impulse * (level * sinAim + aside * cosAim),
    vy: impulse * (level * cosAim - aside * sinAim),
    vz: impulse * (upward * cosUp - ahead * sinUp),
    wx: spinLevel * sinAim + spinRight * cosAim,
    wy: spinLevel * cosAim - spinRight * sinAim,
    wz: spinUp * cosUp - spinAhead * sinUp,
  };
}
