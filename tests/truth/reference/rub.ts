import { length, minus, plus, times, type Vec3 } from './vec3';

/** Two surfaces pressed together for an instant. */
export interface Rub {
  /** Slip of one surface over the other as they touch, m/s, within the common tangent plane. */
  readonly slip: Vec3;
  /** Change of slip per unit of tangential impulse. */
  readonly give: number;
  /** Friction coefficient at a slip speed, m/s. */
  readonly coefficient: (slipMps: number) => number;
}

/**
 * The tangential impulse that opposes the slip while the normal impulse grows bit by bit: each bit
 * of friction follows the slip as it then is, and never does more than stop it. Central spheres
 * keep tangential and normal apart, so nothing starts the slip again.
 *
 * Source: Coulomb friction with the normal impulse as clock (Routh's method, from memory).
 *
 * @param phases normal impulse of compression, then of restitution
 */
export function rubThrough(rub: Rub, phases: readonly number[], bits: number): Vec3 {
  let slip = rub.slip;
  let impulse: Vec3 = [0, 0, 0];
  for (const normalImpulse of phases) {
    for (let bit = 0; bit < bits; bit++) {
      const speed = length(slip);
      if (speed === 0) return impulse;
      const friction = Math.min((rub.coefficient(speed) * normalImpulse) / bits, speed / rub.give);
      const against = times(-friction / speed, slip);
      impulse = plus(impulse, against);
      slip = friction * rub.give >= speed ? [0, 0, 0] : minus(slip, times(-rub.give, against));
    }
  }
  return impulse;
}
