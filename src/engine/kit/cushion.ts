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
