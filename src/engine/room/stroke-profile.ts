import { RAD_PER_DEG } from '../numerics/angle';

/** How a player's strokes scatter about what was meant, one standard deviation each. */
export interface StrokeProfile {
  /** Of the cue's direction, rad. */
  readonly directionRad: number;
  /** Of the speed, as a share of it. */
  readonly speedShare: number;
  /** Of the tip's contact point, sideways and in height alike, m. */
  readonly tipM: number;
  readonly elevationRad: number;
  /**
   * How far direction and sideways tip error go together, 0 to 1: a cue that turns about the bridge
   * moves both the same way.
   */
  readonly together: number;
}

/** Direction and sideways tip error go together half-way in all of them: ours, nothing says more. */
const TOGETHER = 0.5;

/**
 * Three invented players, made to pot as often as such players do: see the anchors of the truth
 * tests. Those are common practice, no source; how speed and elevation scatter is ours.
 */
export const INVENTED_PROFILES = {
  steady: {
    directionRad: 0.08 * RAD_PER_DEG,
    speedShare: 0.03,
    tipM: 0.0008,
    elevationRad: 0.25 * RAD_PER_DEG,
    together: TOGETHER,
  },
  club: {
    directionRad: 0.13 * RAD_PER_DEG,
    speedShare: 0.05,
    tipM: 0.001,
    elevationRad: 0.3 * RAD_PER_DEG,
    together: TOGETHER,
  },
  beginner: {
    directionRad: 0.5 * RAD_PER_DEG,
    speedShare: 0.1,
    tipM: 0.0018,
    elevationRad: 0.4 * RAD_PER_DEG,
    together: TOGETHER,
  },
} as const satisfies Record<string, StrokeProfile>;
