import { RAD_PER_DEG } from '../numerics/angle';

/** What is off shot after shot: the middle about which a player's strokes scatter. */
export interface SteadyErrors {
  /** Of the cue's direction, rad, right +. */
  readonly aimRad: number;
  /** Of the cue's direction where there is a cut, rad, towards a fuller hit +. */
  readonly fullRad: number;
  /** Of the speed, as a share of it, harder +. */
  readonly speedShare: number;
  /** How many times the kit's the cue's mass ratio is; left out: once. */
  readonly massRatioTimes?: number;
  /** What is not known of the direction's errors, which counts as scatter; left out: nothing. */
  readonly unsure?: UnsureErrors;
}

/** One standard deviation each, rad, and how they go together, −1 to 1. */
export interface UnsureErrors {
  readonly aimRad: number;
  readonly fullRad: number;
  readonly correlation: number;
}

/** One of several who may be the player: deviations, and errors that come shot after shot. */
export type LikelyStroke = readonly [
  directionRad: number,
  tipM: number,
  speedShare: number,
  steadyAimRad: number,
  steadyFullRad: number,
  steadySpeedShare: number,
  massRatioTimes: number,
];

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
  /** Left out: what was meant is the middle. */
  readonly steady?: SteadyErrors;
  /**
   * All as likely to be the player, who is told by their middle: a chance is the mean of theirs. Great
   * errors go with steady strokes in what shots tell, which no one player can have. Left out: the
   * player is known.
   */
  readonly likely?: readonly LikelyStroke[];
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
