import { DEFAULT_KIT, type Kit } from '../../src/engine/kit/kit';

/** A cue with no end mass: the ball leaves along the cue, and keeps all of its spin. */
export const NO_SQUIRT: Kit = { ...DEFAULT_KIT, massRatio: Number.POSITIVE_INFINITY };

/** Balls without friction, of a given restitution. */
export function frictionlessBalls(ballRestitution: number): Kit {
  return { ...DEFAULT_KIT, ballRestitution, ballFriction: { a: 0, b: 0, c: 0 } };
}
