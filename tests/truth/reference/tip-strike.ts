import type { Shot } from '../../../src/engine/direct/shot';
import type { Kit } from '../../../src/engine/kit/kit';
import { type Body, struck, surfaceVelocity } from './body';
import { cross, dot, minus, plus, times, type Vec3 } from './vec3';

/** What the tip does to the ball, in the terms of a shot. */
export type Stroke = Pick<Shot, 'side' | 'height' | 'elevationRad' | 'speedMps'>;

type Pair = readonly [number, number];

/**
 * The cue ball as it leaves the tip. No formula for squirt is used: the impulse is the one for
 * which the ball's surface under the tip moves sideways and up or down (both ways alike) just as
 * the cue's end mass, pushed by the opposite impulse, does.
 *
 * Source: no slip of a chalked tip, with the sideways momentum of the cue's end kept (Shepard 2001;
 * Cross, Am. J. Phys. 76:205 (2008), from memory).
 */
export function tipStrike(stroke: Stroke, aimRad: number, kit: Kit): Body {
  const { side, height, elevationRad, speedMps } = stroke;
  const radiusM = kit.ballRadiusM;
  const level = Math.cos(elevationRad);
  const cue: Vec3 = [Math.sin(aimRad) * level, Math.cos(aimRad) * level, -Math.sin(elevationRad)];
  const right: Vec3 = [Math.cos(aimRad), -Math.sin(aimRad), 0];
  const up = cross(right, cue);
  const depth = Math.sqrt(1 - side ** 2 - height ** 2);
  const off = plus(times(side, right), times(height, up));
  const arm = times(radiusM, minus(off, times(depth, cue)));

  const still: Body = { at: [0, 0, 0], velocity: [0, 0, 0], spin: [0, 0, 0] };
  /** By how much ball and cue end part sideways and upwards, times the end mass (m = 1). */
  const parting = (impulse: Vec3): Pair => {
    const surface = surfaceVelocity(struck(still, arm, impulse, radiusM), arm);
    const across = (axis: Vec3) => dot(surface, axis) / kit.massRatio + dot(impulse, axis);
    return [across(right), across(up)];
  };
  const [a, b] = solvePair(parting(right), parting(up), parting(cue));
  const impulse = plus(cue, plus(times(a, right), times(b, up)));
  const scale = speedMps / Math.hypot(impulse[0], impulse[1]);
  return struck(still, arm, times(scale, impulse), radiusM);
}

/** The a and b with a·p + b·q + r = 0. */
function solvePair(p: Pair, q: Pair, r: Pair): Pair {
  const determinant = p[0] * q[1] - p[1] * q[0];
  return [(q[0] * r[1] - q[1] * r[0]) / determinant, (p[1] * r[0] - p[0] * r[1]) / determinant];
}
