import { type BallState, type Pad, padOf, slipX, slipY } from '../ball/ball-state';
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
 * The ball after the bed has answered its downward speed. A ball that is in the air, or leaves the
 * bed, is returned as it is.
 */
export function afterBed(ball: BallState, kit: Kit): BallState {
  if (ball.zM > 0 || ball.vz === 0 || (ball.vz > 0 && isFlown(ball.vz, kit))) return ball;
  const after = padOf(ball);
  meetBed(after, kit);
  return after;
}

/**
 * Lets the bed answer a ball's downward speed: w comes back as e_bed·w, and the bed's friction takes
 * the lesser of μ_s times that impulse and what stops the slip. A ball that is in the air, or leaves
 * the bed, stays as it is.
 */
export function meetBed(ball: Pad<BallState>, kit: Kit): void {
  if (ball.zM > 0) return;
  if (ball.vz >= 0) {
    if (!isFlown(ball.vz, kit)) ball.vz = 0;
    return;
  }
  const downMps = -ball.vz;
  const rebound = kit.bedRestitution * downMps;
  const upMps = isFlown(rebound, kit) ? rebound : 0;
  takeBedFriction(ball, kit, downMps + upMps);
  ball.zM = 0;
  ball.vz = upMps;
}

function isFlown(upMps: number, kit: Kit): boolean {
  return upMps > leastHop(kit);
}

/**
 * Upward speed below which no bounce is flown, m/s: a chain of them lasts 2u/(g(1 − e)), u being the
 * speed it starts with.
 */
export function leastHop(kit: Kit): number {
  return ((1 - kit.bedRestitution) * g * SETTLING_S) / 2;
}

/** @param normalMps the bed's normal impulse over the ball's mass */
function takeBedFriction(ball: Pad<BallState>, kit: Kit, normalMps: number): void {
  const radiusM = kit.ballRadiusM;
  const ux = slipX(ball, radiusM);
  const uy = slipY(ball, radiusM);
  const slip = length(ux, uy);
  const most = SLIP_TO_CENTRE * slip;
  const taken = slip > 0 ? Math.min(kit.slideFriction * normalMps, most) / slip : 0;
  const spin = (SPIN_SHARE * taken) / radiusM;
  ball.vx -= taken * ux;
  ball.vy -= taken * uy;
  ball.wx -= spin * uy;
  ball.wy += spin * ux;
}
