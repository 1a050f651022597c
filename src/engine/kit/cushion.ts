import type { Range } from '../numerics/range';

/** The numbers of a table's cushions. */
export interface Cushion {
  /** e: the cushion gives back e² of the work done on it. */
  readonly restitution: number;
  /** Friction between ball and cushion, μ. */
  readonly friction: number;
  /** Height of the nose over the bed, as a share of the ball's radius. */
  readonly noseHeight: number;
}

/**
 * A pool table's. Sources: restitution and friction, Mathavan, Jackson and Parkin, Proc. IMechE C
 * 224(9):1863 (2010), measured on a snooker table; nose at 0.635 of the ball's diameter, mid-way of
 * the WPA equipment specification (0.625-0.645).
 */
export const DEFAULT_CUSHION: Cushion = { restitution: 0.98, friction: 0.14, noseHeight: 1.27 };

/**
 * What the engine accepts of a cushion. Wide of what tables show (noses 1.2-1.4 radii high, from
 * memory), and within what lets every ball part again: a nose so high and so rough that bed and
 * cushion together jam the ball is left out.
 */
export const CUSHION_RANGES = {
  restitution: { min: 0.5, max: 1 },
  friction: { min: 0, max: 0.3 },
  noseHeight: { min: 1.1, max: 1.45 },
} as const satisfies Record<keyof Cushion, Range>;
