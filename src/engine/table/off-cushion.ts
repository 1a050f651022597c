import type { BallState } from '../ball/ball-state';
import { afterCushion } from '../impacts/cushion';
import type { Kit } from '../kit/kit';
import type { NearestOnCushion } from './nearest-on-cushion';
import { SLOW_MPS } from './slow-touch';

/** The ball just after it met a cushion at a place of its edge. */
export function offCushion(ball: BallState, { nx, ny }: NearestOnCushion, kit: Kit): BallState {
  const normal = normalAt(ball, nx, ny, kit);
  if (closingOf(ball, normal) <= SLOW_MPS) return mirrored(ball, normal);
  const after = afterCushion(ball, nx, ny, kit);
  return closingOf(after, normal) > 0 ? mirrored(after, normal) : after;
}

/** From the ball's centre to the edge. */
type Normal = readonly [x: number, y: number, z: number];

/** On the bed the bed answers what goes down, so that all of the rebound is along it. */
function normalAt(ball: BallState, nx: number, ny: number, kit: Kit): Normal {
  if (ball.zM === 0 && ball.vz === 0) return [nx, ny, 0];
  const rise = Math.max(-1, kit.cushion.noseHeight - 1 - ball.zM / kit.ballRadiusM);
  const level = Math.sqrt(1 - rise * rise);
  return [nx * level, ny * level, rise];
}

function closingOf({ vx, vy, vz }: BallState, [x, y, z]: Normal): number {
  return vx * x + vy * y + vz * z;
}

/** The ball turned back as fast as it came, without friction: so slow a touch hardly rubs. */
function mirrored(ball: BallState, normal: Normal): BallState {
  const [x, y, z] = normal;
  const back = 2 * closingOf(ball, normal);
  return { ...ball, vx: ball.vx - back * x, vy: ball.vy - back * y, vz: ball.vz - back * z };
}
