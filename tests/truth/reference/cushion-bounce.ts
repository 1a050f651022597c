import type { Cushion, Kit } from '../../../src/engine/kit/kit';
import { type Body, struck, surfaceVelocity } from './body';
import { dot, length, minus, plus, times, type Vec3 } from './vec3';

/**
 * What a cushion gives back of what it is met with: all of its restitution up to a speed, then less
 * by so much a metre a second, down to 0.58 or to where a harder ball would come back no faster.
 */
function restitutionMet(cushion: Cushion, squareMps: number): number {
  const { restitution: gentle, lossPerMps, lossFromMps } = cushion;
  if (squareMps <= lossFromMps || gentle <= 0.58) return gentle;
  // Where v · e(v) turns, for e(v) = gentle − loss · (v − from).
  const turnsAtMps = lossPerMps > 0 ? (gentle / lossPerMps + lossFromMps) / 2 : Number.MAX_VALUE;
  const atMps = Math.min(squareMps, Math.max(turnsAtMps, lossFromMps));
  return Math.max(0.58, gentle - lossPerMps * (atMps - lossFromMps));
}

/** Coulomb friction of a normal impulse, against the slip as it is. */
function frictionOf(slip: Vec3, most: number): Vec3 {
  const speed = length(slip);
  return speed > 0 ? times(-most / speed, slip) : [0, 0, 0];
}

/**
 * A ball that meets a cushion, by many small and equal impulses of the nose, each with the friction
 * of the slip before it; the bed gives what keeps the ball from sinking, and friction of its own.
 *
 * Source: the numerical scheme of Mathavan, Jackson and Parkin, Proc. IMechE C 224(9):1863 (2010)
 * (from memory, re-derived with vectors). The loss at speed is matched to the square rebounds of the
 * same authors, Am. J. Phys. 77:788 (2009) (second-hand).
 *
 * @param into unit vector from the ball's centre into the cushion, level
 */
export function cushionBounce(
  ball: Body,
  into: Vec3,
  cushion: Cushion,
  kit: Kit,
  increments: number,
): Body {
  const normal = noseNormal(ball, into, cushion, kit.ballRadiusM);
  const closingOf = (body: Body) => dot(body.velocity, normal);
  const restitution = restitutionMet(cushion, dot(ball.velocity, into));
  const impulse = (2 * closingOf(ball)) / increments;
  let [body, work, deepest] = [ball, 0, 0];
  for (let count = 0; count < 40 * increments; count++) {
    const before = closingOf(body);
    body = pressed(body, normal, impulse, cushion, kit);
    work += (impulse * (before + closingOf(body))) / 2;
    deepest = Math.max(deepest, work);
    if (before < 0 && work <= (1 - restitution ** 2) * deepest) return body;
  }
  throw new Error('The ball does not part from the cushion');
}

/** From the ball's centre to the nose that it touches, which is lower than a ball in the air. */
export function noseNormal({ at }: Body, into: Vec3, cushion: Cushion, radiusM: number): Vec3 {
  const rise = cushion.noseHeight - 1 - at[2] / radiusM;
  return plus(times(Math.sqrt(1 - rise ** 2), into), [0, 0, rise]);
}

function pressed(body: Body, normal: Vec3, impulse: number, cushion: Cushion, kit: Kit): Body {
  const radiusM = kit.ballRadiusM;
  const noseArm = times(radiusM, normal);
  const bedArm: Vec3 = [0, 0, -radiusM];
  const surface = surfaceVelocity(body, noseArm);
  const slip = minus(surface, times(dot(surface, normal), normal));
  const nose = plus(times(-impulse, normal), frictionOf(slip, cushion.friction * impulse));
  const bedNormal = body.at[2] > 0 ? 0 : Math.max(0, -(body.velocity[2] + nose[2]));
  const [bedX, bedY] = surfaceVelocity(body, bedArm);
  const rub = frictionOf([bedX, bedY, 0], kit.slideFriction * bedNormal);
  return struck(
    struck(body, noseArm, nose, radiusM),
    bedArm,
    plus(rub, [0, 0, bedNormal]),
    radiusM,
  );
}
