import type { StrokeProfile } from '../room/stroke-profile';
import { PLAYER_PRIOR, strokeByRule } from './player-rule';

/**
 * What is not known of a player, in prior standard deviations: level, aim bias, full bias, scatter of
 * the speed, its bias, the squirt of the cue in play, and the tip's scatter. Every prior is the standard
 * normal law.
 */
export type Unknowns = readonly number[];
export const UNKNOWNS = 7;
/** The place of the level among them. */
export const LEVEL = 0;

/** A player as some values of the unknowns make one. */
export interface Player {
  readonly stroke: StrokeProfile;
  /** Steady errors of the line, rad: right +, and towards full +. */
  readonly aimBiasRad: number;
  readonly fullBiasRad: number;
  /** A steady error of the speed, as a share, harder +. */
  readonly speedBias: number;
  readonly squirtSds: number;
}

/**
 * The stroke at a level, in prior deviations: 0 is the middle, more scatters more.
 *
 * @param speedTimes how many times as wide as by the rule the speed scatters
 * @param tipTimes the same of the tip
 */
export function levelStroke(level: number, speedTimes = 1, tipTimes = 1): StrokeProfile {
  const directionRad = PLAYER_PRIOR.directionRad * Math.exp(PLAYER_PRIOR.directionSd * level);
  return strokeByRule(directionRad, speedTimes, tipTimes);
}

export function playerOf(unknowns: Unknowns): Player {
  const [level = 0, aim = 0, full = 0, scatter = 0, speed = 0, squirtSds = 0, tip = 0] = unknowns;
  const biasTimes = Math.exp((PLAYER_PRIOR.directionSd * level) / 4);
  return {
    stroke: levelStroke(
      level,
      Math.exp(PLAYER_PRIOR.speedScatterSd * scatter),
      Math.exp(PLAYER_PRIOR.tipScatterSd * tip),
    ),
    aimBiasRad: biasTimes * PLAYER_PRIOR.aimBiasRad * aim,
    fullBiasRad: biasTimes * PLAYER_PRIOR.fullBiasRad * full,
    speedBias: PLAYER_PRIOR.speedBias * speed,
    squirtSds,
  };
}
