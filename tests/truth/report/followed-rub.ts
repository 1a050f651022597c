import type { Kit } from '../../../src/engine/kit/kit';
import { ballImpact, type Impact } from '../reference/ball-impact';
import { type Body, surfaceVelocity } from '../reference/body';
import { dot, length, minus, times, type Vec3 } from '../reference/vec3';

const DEG = 180 / Math.PI;
/** Enough for a hundredth of a degree. */
const BITS = 200;

/**
 * What would change if the friction coefficient of two balls followed the slip through the impact,
 * where the model takes one for all of it, at first touch, as it was measured.
 */
export interface FollowedRub {
  /** By how much the object ball would leave elsewhere, degrees. */
  readonly movedDeg: number;
  /** From the cue ball's direction to the line of centres, seen from above, degrees. */
  readonly cutDeg: number;
  /** Whether the cue ball was off the bed. */
  readonly flying: boolean;
  readonly speedMps: number;
  /** At first touch. */
  readonly slipMps: number;
}

/** @param impact as the model has it */
export function followedRub(
  cueBall: Body,
  { normal, objectBall }: Impact,
  objectAt: Vec3,
  kit: Kit,
): FollowedRub {
  const followed = ballImpact(cueBall, objectAt, kit, { bits: BITS, following: true });
  const surface = surfaceVelocity(cueBall, times(kit.ballRadiusM, normal));
  const closing = dot(surface, normal);
  return {
    movedDeg: planAngle(followed.objectBall.velocity, objectBall.velocity) * DEG,
    cutDeg: planAngle(normal, cueBall.velocity) * DEG,
    flying: cueBall.at[2] > 0,
    speedMps: length(cueBall.velocity),
    slipMps: length(minus(surface, times(closing, normal))),
  };
}

/** Between two directions seen from above, without sign. */
function planAngle([ax, ay]: Vec3, [bx, by]: Vec3): number {
  return Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by));
}
