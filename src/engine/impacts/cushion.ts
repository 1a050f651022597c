import { type BallState, slipX, slipY } from '../ball/ball-state';
import { SPIN_SHARE } from '../ball/inertia';
import type { Kit } from '../kit/kit';
import { afterBed } from './bed-impulse';
import type { CushionContact, Push, Slips } from './cushion-contact';
import { CushionImpact } from './cushion-impact';
import { restitutionAt } from './restitution-at';

/** A ball that closes in more slowly than this, m/s, stands still: squares of it would underflow. */
const LEAST_CLOSING_MPS = 1e-100;

/**
 * The ball just after it met a straight cushion.
 *
 * Nose and bed touch it at once. Friction acts at both, each against its own slip, and the bed
 * carries what the nose presses down; the nose's impulse goes on until the normal velocity stops
 * and then until e² of the work done has come back. Source: Mathavan, Jackson and Parkin, Proc.
 * IMechE C 224(9):1863 (2010). Their fit holds up to a normal speed of 2.5 m/s; what is lost above
 * it: see `restitutionAt`.
 *
 * The impulse goes in increments. Against the limit of ever finer ones, on any ordinary table the
 * direction is right within 0.005° and the speed within 0.0002 of what it was; at the far corners of
 * {@link CUSHION_RANGES} within 0.05° and 0.0005.
 *
 * A ball in the air meets the nose alone, at the height where it is, and leaves it up or down. One
 * higher than the nose passes over it, and one that does not move into the nose has nothing to
 * answer: both are returned as they are. A ball still going down into the bed is thrown back by the
 * bed first.
 *
 * @param nx, ny unit vector from the ball's centre into the cushion, level and square to the rail
 */
export function afterCushion(ball: BallState, nx: number, ny: number, kit: Kit): BallState {
  const met = afterBed(ball, kit);
  const contact = contactOf(met, nx, ny, kit);
  if (contact === null) return ball;
  const slips = slipsOf(met, nx, ny, contact, kit.ballRadiusM);
  if (!(slips.closing > LEAST_CLOSING_MPS)) return ball;
  const impact = new CushionImpact(slips, contact);
  impact.run();
  return pushed(met, nx, ny, impact.push, impact.rising, contact, kit.ballRadiusM);
}

/** Null where the ball passes over the nose. */
function contactOf(ball: BallState, nx: number, ny: number, kit: Kit): CushionContact | null {
  const { cushion } = kit;
  const sinRise = cushion.noseHeight - 1 - ball.zM / kit.ballRadiusM;
  if (!(sinRise > -1)) return null;
  return {
    sinRise,
    cosRise: Math.sqrt(1 - sinRise * sinRise),
    alongShare: 1 - SPIN_SHARE * sinRise,
    acrossShare: SPIN_SHARE - sinRise,
    restitution: restitutionAt(cushion, ball.vx * nx + ball.vy * ny),
    noseFriction: cushion.friction,
    bedFriction: kit.slideFriction,
    overBed: ball.zM === 0,
  };
}

/** Along the rail is to the right of n. */
function slipsOf(
  ball: BallState,
  nx: number,
  ny: number,
  { sinRise, cosRise }: CushionContact,
  radiusM: number,
): Slips {
  const along = ball.vx * ny - ball.vy * nx;
  const into = ball.vx * nx + ball.vy * ny;
  const spinAlong = radiusM * (ball.wx * ny - ball.wy * nx);
  const spinInto = radiusM * (ball.wx * nx + ball.wy * ny);
  const [x, y] = [slipX(ball, radiusM), slipY(ball, radiusM)];
  return {
    closing: into * cosRise + ball.vz * sinRise,
    rising: ball.vz,
    noseAlong: along + spinInto * sinRise - radiusM * ball.wz * cosRise,
    noseUp: spinAlong + ball.vz * cosRise - into * sinRise,
    bedAlong: x * ny - y * nx,
    bedInto: x * nx + y * ny,
  };
}

/** The ball once it has been given `push`: its momentum and spin follow from the impulses' arms. */
function pushed(
  ball: BallState,
  nx: number,
  ny: number,
  push: Push,
  vz: number,
  { sinRise, cosRise }: CushionContact,
  radiusM: number,
): BallState {
  const along = push.noseAlong + push.bedAlong;
  const into = push.bedInto - cosRise * push.nose - sinRise * push.noseUp;
  const spin = SPIN_SHARE / radiusM;
  const spinAlong = spin * (push.noseUp + push.bedInto);
  const spinInto = spin * (sinRise * push.noseAlong - push.bedAlong);
  return {
    xM: ball.xM,
    yM: ball.yM,
    zM: ball.zM,
    vx: ball.vx + along * ny + into * nx,
    vy: ball.vy - along * nx + into * ny,
    vz,
    wx: ball.wx + spinAlong * ny + spinInto * nx,
    wy: ball.wy - spinAlong * nx + spinInto * ny,
    wz: ball.wz - spin * cosRise * push.noseAlong,
  };
}
