import { cross, plus, times, type Vec3 } from './vec3';

/** Standard gravity, m/s². Source: 3rd CGPM (1901), exact by convention. */
export const GRAVITY = 9.80665;

/** A ball in flight or on the bed: what it takes to go on from an instant. SI units. */
export interface Body {
  /** Centre of the ball, less one radius in z: 0 on the bed. */
  readonly at: Vec3;
  readonly velocity: Vec3;
  /** Right-handed. */
  readonly spin: Vec3;
}

/** Velocity of the surface at `arm` from the centre. */
export function surfaceVelocity(body: Body, arm: Vec3): Vec3 {
  return plus(body.velocity, cross(body.spin, arm));
}

/**
 * The body after an impulse at `arm`. Source: momentum, and angular momentum with I = (2/5) m R².
 *
 * @param impulse per unit of the ball's mass, m/s
 */
export function struck(body: Body, arm: Vec3, impulse: Vec3, radiusM: number): Body {
  const perInertia = 2.5 / radiusM ** 2;
  return {
    at: body.at,
    velocity: plus(body.velocity, impulse),
    spin: plus(body.spin, times(perInertia, cross(arm, impulse))),
  };
}
