import { DEFAULT_KIT, type Kit } from '../../src/engine/model/kit';

/** A cue with no end mass: the ball leaves along the cue, and keeps all of its spin. */
export const NO_SQUIRT: Kit = { ...DEFAULT_KIT, massRatio: Number.POSITIVE_INFINITY };

/** Balls that neither throw nor lose anything. */
export const IDEAL_BALLS: Kit = {
  ...DEFAULT_KIT,
  ballRestitution: 1,
  ballFriction: { a: 0, b: 0, c: 0 },
};

/** The same with a restitution of one's own. */
export function frictionlessBalls(ballRestitution: number): Kit {
  return { ...IDEAL_BALLS, ballRestitution };
}
