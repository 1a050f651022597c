import type { BallState } from '../ball/ball-state';
import { SLIP_TO_CENTRE, SPIN_SHARE } from '../ball/inertia';
import type { BallFriction, Kit } from '../kit/kit';

/**
 * Effective friction coefficient of a whole impact between two balls at the slip speed of first
 * touch (m/s): μ(u) = a + b·e^(−c·u). Source: the form fits Marlow 1995 (from memory).
 */
export function ballFrictionAt(friction: BallFriction, slipMps: number): number {
  return friction.a + friction.b * Math.exp(-friction.c * slipMps);
}

/** What the cue ball gives the object ball at contact: impulse over the object ball's mass, m/s. */
export interface Kick {
  x: number;
  y: number;
  z: number;
  /** Speed at which the cue ball closes along the line of centres, m/s; not above 0: no contact. */
  closingMps: number;
}

/** A fresh scratch pad for {@link kickOf}. */
export function newKick(): Kick {
  return { x: 0, y: 0, z: 0, closingMps: 0 };
}

/**
 * Writes into `kick` what a cue ball in state `ball` gives an object ball at rest in the direction
 * of the unit vector n from centre to centre.
 *
 * Normal restitution e_b. Friction acts against the slip of the touching surfaces, sideways and
 * vertical together, with the coefficient of first touch, and never gives more than what stops the
 * slip: 2/7 of it over the balls' joint mass. At grazing (nothing closes) the direction's limit is
 * kept: full slip. Source: Cross, Am. J. Phys. 76:205 (2008), and rigid-body mechanics (exact).
 */
export function kickOf(
  ball: BallState,
  nx: number,
  ny: number,
  nz: number,
  kit: Kit,
  kick: Kick,
): void {
  const radiusM = kit.ballRadiusM;
  const closing = ball.vx * nx + ball.vy * ny + ball.vz * nz;
  const slipX = ball.vx - closing * nx + radiusM * (ball.wy * nz - ball.wz * ny);
  const slipY = ball.vy - closing * ny + radiusM * (ball.wz * nx - ball.wx * nz);
  const slipZ = ball.vz - closing * nz + radiusM * (ball.wx * ny - ball.wy * nx);
  const slip = Math.sqrt(slipX * slipX + slipY * slipY + slipZ * slipZ);
  // Joint mass over the object ball's.
  const share = kit.cueBallMassRatio / (1 + kit.cueBallMassRatio);
  const normal = closing > 0 ? (1 + kit.ballRestitution) * closing : 1;
  const most = closing > 0 ? SLIP_TO_CENTRE * slip : Number.POSITIVE_INFINITY;
  const rub = Math.min(ballFrictionAt(kit.ballFriction, slip) * normal, most);
  const perSlip = slip > 0 ? rub / slip : 0;
  kick.x = share * (normal * nx + perSlip * slipX);
  kick.y = share * (normal * ny + perSlip * slipY);
  kick.z = share * (normal * nz + perSlip * slipZ);
  kick.closingMps = closing;
}

/** Both balls just after contact. */
export interface AfterContact {
  readonly cueBall: BallState;
  readonly objectBall: BallState;
}

/**
 * Both balls just after a contact that gives `kick`, the object ball having been at rest.
 *
 * @param n unit vector from the cue ball's centre to the object ball's
 */
export function afterContact(
  ball: BallState,
  nx: number,
  ny: number,
  nz: number,
  kick: Kick,
  kit: Kit,
): AfterContact {
  const radiusM = kit.ballRadiusM;
  const back = 1 / kit.cueBallMassRatio;
  // Torque of the impulse at the contact: n × kick for the cue ball's reaction and for the object
  // ball alike, since both the arm and the impulse change sign.
  const spin = SPIN_SHARE / radiusM;
  const turnX = spin * (ny * kick.z - nz * kick.y);
  const turnY = spin * (nz * kick.x - nx * kick.z);
  const turnZ = spin * (nx * kick.y - ny * kick.x);
  return {
    cueBall: {
      xM: ball.xM,
      yM: ball.yM,
      zM: ball.zM,
      vx: ball.vx - back * kick.x,
      vy: ball.vy - back * kick.y,
      vz: ball.vz - back * kick.z,
      wx: ball.wx - back * turnX,
      wy: ball.wy - back * turnY,
      wz: ball.wz - back * turnZ,
    },
    objectBall: objectBallAfter(ball, nx, ny, nz, kick, kit),
  };
}

/** The object ball alone. */
export function objectBallAfter(
  ball: BallState,
  nx: number,
  ny: number,
  nz: number,
  kick: Kick,
  { ballRadiusM }: Kit,
): BallState {
  const spin = SPIN_SHARE / ballRadiusM;
  return {
    xM: ball.xM + 2 * ballRadiusM * nx,
    yM: ball.yM + 2 * ballRadiusM * ny,
    zM: 0,
    vx: kick.x,
    vy: kick.y,
    vz: kick.z,
    wx: -spin * (ny * kick.z - nz * kick.y),
    wy: -spin * (nz * kick.x - nx * kick.z),
    wz: -spin * (nx * kick.y - ny * kick.x),
  };
}
