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

const RAD = Math.PI / 180;

/**
 * Three invented players. Directions are of the order people say of themselves (from memory of the
 * literature: strong 0.1-0.2°, good amateur 0.3-0.5°, beginner 1° and more); the rest is ours.
 */
export const INVENTED_PROFILES = {
  steady: {
    directionRad: 0.15 * RAD,
    speedShare: 0.04,
    tipM: 0.0006,
    elevationRad: 0.3 * RAD,
    together: 0.6,
  },
  club: {
    directionRad: 0.4 * RAD,
    speedShare: 0.08,
    tipM: 0.0012,
    elevationRad: 0.6 * RAD,
    together: 0.5,
  },
  beginner: {
    directionRad: 1 * RAD,
    speedShare: 0.15,
    tipM: 0.0025,
    elevationRad: 1 * RAD,
    together: 0.4,
  },
} as const satisfies Record<string, StrokeProfile>;
