/**
 * A ball at an instant, SI units. x is right, y along the straight line away from the shooter, z
 * up; spin is a right-handed vector, so ω_z is + for right side and topspin going +y is −ω_x.
 */
export interface BallState {
  readonly xM: number;
  readonly yM: number;
  /** Height of the lowest point of the ball above the cloth. */
  readonly zM: number;
  readonly vx: number;
  readonly vy: number;
  readonly vz: number;
  readonly wx: number;
  readonly wy: number;
  readonly wz: number;
}

/** A ball at rest on the bed. */
export function restingAt(xM: number, yM: number): BallState {
  return { xM, yM, zM: 0, vx: 0, vy: 0, vz: 0, wx: 0, wy: 0, wz: 0 };
}

/** A scratch pad that a caller owns and may use again. */
export type Pad<T> = { -readonly [K in keyof T]: T[K] };

/** A pad that holds the same state. */
export function padOf({ xM, yM, zM, vx, vy, vz, wx, wy, wz }: BallState): Pad<BallState> {
  return { xM, yM, zM, vx, vy, vz, wx, wy, wz };
}

/** x of the velocity with which the ball's lowest point slips over the cloth, m/s. */
export function slipX(ball: BallState, radiusM: number): number {
  return ball.vx - radiusM * ball.wy;
}

/** y of the same. */
export function slipY(ball: BallState, radiusM: number): number {
  return ball.vy + radiusM * ball.wx;
}

/** Writes a state into a pad. */
export function copyBall(from: BallState, to: Pad<BallState>): void {
  to.xM = from.xM;
  to.yM = from.yM;
  to.zM = from.zM;
  to.vx = from.vx;
  to.vy = from.vy;
  to.vz = from.vz;
  to.wx = from.wx;
  to.wy = from.wy;
  to.wz = from.wz;
}

/** Spin about the vertical after the cloth has worn it down for a while (s), at so many rad/s². */
export function spinLeft(wz: number, decayRadS2: number, timeS: number): number {
  return wz - Math.sign(wz) * Math.min(decayRadS2 * timeS, Math.abs(wz));
}
