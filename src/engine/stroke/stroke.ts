import { RAD_PER_DEG } from '../numerics/angle';
import type { Range } from '../numerics/range';

/** What the cue does: the five inputs of a player. */
export interface Stroke {
  /** Horizontal direction of the cue, rad, right + of the straight line; over a table, of y. */
  readonly aimRad: number;
  /**
   * Contact point in the face seen along the cue, fractions of R; right + and up +. The stick's axis
   * lies 1 + tip radius / R times as far out.
   */
  readonly side: number;
  readonly height: number;
  readonly elevationRad: number;
  /** Horizontal speed of the ball as it leaves the tip, m/s. */
  readonly speedMps: number;
}

/**
 * What the engine accepts of a stroke. The lower speed is a ball that barely leaves the tip; the upper
 * is above the nine-ball break of Onoda 1989 (9.8-11.6 m/s). The steepest elevation is a massé's. The
 * aim is one along a straight line; over a table every direction will do.
 */
export const STROKE_RANGES = {
  aimRad: { min: -90 * RAD_PER_DEG, max: 90 * RAD_PER_DEG },
  side: { min: -1, max: 1 },
  height: { min: -1, max: 1 },
  elevationRad: { min: 0, max: 75 * RAD_PER_DEG },
  speedMps: { min: 0.02, max: 13 },
} as const satisfies Record<keyof Stroke, Range>;
