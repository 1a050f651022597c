import { RAD_PER_DEG } from '../numerics/angle';
import type { StrokeProfile } from '../room/stroke-profile';

/**
 * How the rest of a stroke scatters goes by how the cue's direction does. Source: the pairs of
 * direction and tip that make straight shots as often as players of all levels do (common practice,
 * no source); how speed and elevation go along is ours. Within 8 % of each of those pairs.
 */
const AT_RAD = 0.5 * RAD_PER_DEG;
const TIP = { atM: 0.00185, power: 0.46 } as const;
const SPEED = { at: 0.1, power: 0.6 } as const;
const ELEVATION = { atRad: 0.4 * RAD_PER_DEG, power: 0.25 } as const;
/** Half-way: nothing says more. */
const TOGETHER = 0.5;

/** The widest share of a speed that a stroke's law takes. */
const MOST_SPEED_SHARE = 0.5;

/**
 * The stroke of a player, by the scatter of the cue's direction alone.
 *
 * @param directionRad one standard deviation
 * @param speedTimes how many times as wide as by the rule the speed scatters
 * @param tipTimes the same of the tip
 */
export function strokeByRule(directionRad: number, speedTimes = 1, tipTimes = 1): StrokeProfile {
  const times = directionRad / AT_RAD;
  return {
    directionRad,
    tipM: tipTimes * TIP.atM * times ** TIP.power,
    speedShare: Math.min(MOST_SPEED_SHARE, speedTimes * SPEED.at * times ** SPEED.power),
    elevationRad: ELEVATION.atRad * times ** ELEVATION.power,
    together: TOGETHER,
  };
}

/**
 * What is not known of a player of whom nothing is: middles, and one standard deviation each. From a
 * professional's 0.04° to 0.6° of a beginner is the central 95 % of directions (common practice, no
 * source); the rest is ours.
 */
export const PLAYER_PRIOR = {
  directionRad: 0.155 * RAD_PER_DEG,
  /** Of the logarithm. */
  directionSd: Math.log(0.6 / 0.04) / (2 * 1.96),
  /**
   * A steady error of the line, right or left, and towards full or thin, rad: of a player in the
   * middle. It goes with the fourth root of the direction's scatter: who is steady is seldom far off.
   */
  aimBiasRad: 0.1 * RAD_PER_DEG,
  fullBiasRad: 0.1 * RAD_PER_DEG,
  /** Of the logarithm of the speed's scatter, about the rule. */
  speedScatterSd: 0.4,
  /**
   * The same of the tip's. Measured tips scatter 1.2 mm in height (skilled) and 1.8 mm (unskilled), right
   * to a factor of 1.5 (Enghofer 2014, data read); the rule says 0.8 mm and 1.5 to 1.8 mm.
   */
  tipScatterSd: 0.3,
  /** A steady error of the speed, as a share. */
  speedBias: 0.08,
} as const;
