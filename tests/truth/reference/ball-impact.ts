import type { BallFriction, Kit } from '../../../src/engine/kit/kit';
import { type Body, struck, surfaceVelocity } from './body';
import { rubThrough } from './rub';
import { dot, length, minus, plus, times, type Vec3 } from './vec3';

/** Both balls just after they touched. */
export interface Impact {
  readonly cueBall: Body;
  readonly objectBall: Body;
  /** From the cue ball's centre to the object ball's. */
  readonly normal: Vec3;
}

/** How the friction coefficient goes along through the impact. */
export interface ImpactOptions {
  readonly bits: number;
  /** Whether the coefficient follows the slip, or stays as it was at first touch. */
  readonly following: boolean;
}

const AS_MEASURED: ImpactOptions = { bits: 24, following: false };

/** Cue ball against a resting object ball. */
export function ballImpact(cueBall: Body, objectAt: Vec3, kit: Kit, options = AS_MEASURED): Impact {
  const objectBall: Body = { at: objectAt, velocity: [0, 0, 0], spin: [0, 0, 0] };
  return bodiesImpact(cueBall, objectBall, kit, options);
}

/**
 * Two balls, both perhaps moving. The normal impulse compresses until the approach stops, then
 * restitutes a share of that (Newton's restitution); friction is added up along the way.
 */
export function bodiesImpact(
  cueBall: Body,
  objectBall: Body,
  kit: Kit,
  options = AS_MEASURED,
): Impact {
  const between = minus(objectBall.at, cueBall.at);
  const normal = times(1 / length(between), between);
  const arms = { cue: times(kit.ballRadiusM, normal), object: times(-kit.ballRadiusM, normal) };
  const relative = minus(
    surfaceVelocity(cueBall, arms.cue),
    surfaceVelocity(objectBall, arms.object),
  );
  const closing = dot(relative, normal);
  // The object ball's mass is the unit.
  const ease = 1 + 1 / kit.cueBallMassRatio;
  const slip = minus(relative, times(closing, normal));
  const first = coefficientAt(kit.ballFriction, length(slip));
  const friction = rubThrough(
    {
      slip,
      give: 3.5 * ease,
      coefficient: options.following
        ? (slipMps) => coefficientAt(kit.ballFriction, slipMps)
        : () => first,
    },
    [closing / ease, (kit.ballRestitution * closing) / ease],
    options.bits,
  );
  const onCueBall = plus(times((-(1 + kit.ballRestitution) * closing) / ease, normal), friction);
  return {
    cueBall: struck(cueBall, arms.cue, times(1 / kit.cueBallMassRatio, onCueBall), kit.ballRadiusM),
    objectBall: struck(objectBall, arms.object, times(-1, onCueBall), kit.ballRadiusM),
    normal,
  };
}

/** μ(u) = a + b·e^(−c·u), a fit to Marlow 1995 (from memory). */
function coefficientAt({ a, b, c }: BallFriction, slipMps: number): number {
  return a + b * Math.exp(-c * slipMps);
}
