import type { BallState } from '../ball/ball-state';
import type { Kit } from '../kit/kit';
import { afterContact, kickOf, newKick } from './ball-on-ball';

/** Two balls just after they met. */
export interface AfterMeeting {
  readonly one: BallState;
  readonly other: BallState;
}

/** Which way the other ball lies: unit vector from centre to centre. */
export interface LineOfCentres {
  readonly nx: number;
  readonly ny: number;
  readonly nz: number;
  readonly distanceM: number;
}

export function lineOfCentres(one: BallState, other: BallState): LineOfCentres {
  const dx = other.xM - one.xM;
  const dy = other.yM - one.yM;
  const dz = other.zM - one.zM;
  const distanceM = Math.sqrt(dx * dx + dy * dy + dz * dz);
  return { nx: dx / distanceM, ny: dy / distanceM, nz: dz / distanceM, distanceM };
}

/** Speed at which two balls close along their line of centres, m/s. */
export function closingSpeed(one: BallState, other: BallState, line: LineOfCentres): number {
  return (
    (one.vx - other.vx) * line.nx + (one.vy - other.vy) * line.ny + (one.vz - other.vz) * line.nz
  );
}

/**
 * Two balls that touch, both of which may move and spin, just after.
 *
 * The law of a resting object ball, seen from the other ball's centre: impulses depend only on how
 * the surfaces move against each other, which is v1 − v2 + R (ω1 + ω2) × n, the sum of the spins
 * for the arms are opposite. What the impulse changes is the same in every frame. Exact.
 *
 * @param kit its mass ratio is that of `one` over `other`
 */
export function afterMeeting(
  one: BallState,
  other: BallState,
  line: LineOfCentres,
  kit: Kit,
): AfterMeeting {
  const seen: BallState = {
    ...one,
    vx: one.vx - other.vx,
    vy: one.vy - other.vy,
    vz: one.vz - other.vz,
    wx: one.wx + other.wx,
    wy: one.wy + other.wy,
    wz: one.wz + other.wz,
  };
  const kick = newKick();
  kickOf(seen, line.nx, line.ny, line.nz, kit, kick);
  const after = afterContact(seen, line.nx, line.ny, line.nz, kick, kit);
  return {
    one: changedBy(one, after.cueBall, seen),
    other: changedBy(other, after.objectBall, AT_REST),
  };
}

const AT_REST = { vx: 0, vy: 0, vz: 0, wx: 0, wy: 0, wz: 0 };

/** The ball where it is, moved and spun by what lies between two other states. */
function changedBy(ball: BallState, is: typeof AT_REST, was: typeof AT_REST): BallState {
  return {
    xM: ball.xM,
    yM: ball.yM,
    zM: ball.zM,
    vx: ball.vx + (is.vx - was.vx),
    vy: ball.vy + (is.vy - was.vy),
    vz: ball.vz + (is.vz - was.vz),
    wx: ball.wx + (is.wx - was.wx),
    wy: ball.wy + (is.wy - was.wy),
    wz: ball.wz + (is.wz - was.wz),
  };
}
