import { type BallState, slipX, slipY } from '../ball/ball-state';
import { STANDARD_GRAVITY as g } from '../ball/gravity';
import { SLIP_TO_CENTRE, SPIN_SHARE } from '../ball/inertia';
import type { Kit } from '../kit/kit';
import { length } from '../numerics/length';

/**
 * Once all the bounces still to come would be over within this, s, they are not flown: the first
 * would rise less than 0.1 µm, far less than the cloth's nap. The ball then stays down, and the
 * friction of those bounces is the friction of the slide that takes their place. All it costs is
 * that for so long the cloth slows rolling and sidespin, which in the air it would not.
 */
const SETTLING_S = 1e-4;

/**
 * The ball after the bed has answered its downward speed: w comes back as e_bed·w, and the bed's
 * friction takes the lesser of μ_s times that impulse and what stops the slip. A ball that is in
 * the air, or leaves the bed, is returned as it is.
 */
export function afterBed(ball: BallState, kit: Kit): BallState {
  if (ball.zM > 0) return ball;
  if (ball.vz >= 0) return isFlown(ball.vz, kit) ? ball : flattened(ball);
  const downMps = -ball.vz;
  const rebound = kit.bedRestitution * downMps;
  const upMps = isFlown(rebound, kit) ? rebound : 0;
  return withBedFriction(ball, kit, downMps + upMps, upMps);
}

/** A chain of bounces lasts 2u/(g(1 − e)), u being the speed it starts with. */
function isFlown(upMps: number, kit: Kit): boolean {
  return 2 * upMps > (1 - kit.bedRestitution) * g * SETTLING_S;
}

function flattened(ball: BallState): BallState {
  if (ball.vz === 0) return ball;
  const { xM, yM, zM, vx, vy, wx, wy, wz } = ball;
  return { xM, yM, zM, vx, vy, vz: 0, wx, wy, wz };
}

/** @param normalMps the bed's normal impulse over the ball's mass */
function withBedFriction(ball: BallState, kit: Kit, normalMps: number, upMps: number): BallState {
  const radiusM = kit.ballRadiusM;
  const ux = slipX(ball, radiusM);
  const uy = slipY(ball, radiusM);
  const slip = length(ux, uy);
  const most = SLIP_TO_CENTRE * slip;
  const taken = slip > 0 ? Math.min(kit.slideFriction * normalMps, most) / slip : 0;
  const spin = (SPIN_SHARE * taken) / radiusM;
  return {
    xM: ball.xM,
    yM: ball.yM,
    zM: 0,
    vx: ball.vx - taken * ux,
    vy: ball.vy - taken * uy,
    vz: upMps,
    wx: ball.wx - spin * uy,
    wy: ball.wy + spin * ux,
    wz: ball.wz,
  };
}
