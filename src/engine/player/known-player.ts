import { normalBelow } from '../numerics/normal';
import type { StrokeProfile } from '../room/stroke-profile';
import { PLAYER_PRIOR, strokeByRule } from './player-rule';
import { lineScatter, type Result, type ShotLine } from './shot-line';

/**
 * What is not known of a player, in prior standard deviations: level, aim bias, full bias, scatter of
 * the speed, its bias, and the squirt of the cue in play. Every prior is the standard normal law.
 */
export type Unknowns = readonly number[];
export const UNKNOWNS = 6;

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

export function playerOf(unknowns: Unknowns): Player {
  const [level = 0, aim = 0, full = 0, scatter = 0, speed = 0, squirtSds = 0] = unknowns;
  const directionRad = PLAYER_PRIOR.directionRad * Math.exp(PLAYER_PRIOR.directionSd * level);
  return {
    stroke: strokeByRule(directionRad, Math.exp(PLAYER_PRIOR.speedScatterSd * scatter)),
    aimBiasRad: PLAYER_PRIOR.aimBiasRad * aim,
    fullBiasRad: PLAYER_PRIOR.fullBiasRad * full,
    speedBias: PLAYER_PRIOR.speedBias * speed,
    squirtSds,
  };
}

/** Where a player's line lies on a shot in the mean, from its solved aim, rad, right +. */
export function lineBias(player: Player, line: ShotLine): number {
  const { aimBiasRad, fullBiasRad, speedBias, squirtSds } = player;
  return (
    aimBiasRad +
    line.fullSide * fullBiasRad +
    line.perSpeedShare * speedBias +
    line.perSquirtSd * squirtSds
  );
}

/**
 * How much of what is not known of the kit counts as chance. The rest is the same shot after shot, and
 * looks like a steady error (our judgement).
 */
export const KIT_SHARE = 0.4;

/**
 * How likely each result of a shot is for a player.
 *
 * @param aimOffRad where it was aimed, from the solved aim, right +
 */
export function likelihoods(
  player: Player,
  line: ShotLine,
  aimOffRad = 0,
): Partial<Record<Result, number>> {
  const { stroke } = player;
  const other =
    (line.perHeightM * stroke.tipM) ** 2 +
    (line.perSpeedShare * stroke.speedShare) ** 2 +
    (line.perElevation * stroke.elevationRad) ** 2 +
    (KIT_SHARE * line.kitSdRad) ** 2;
  const sd = Math.sqrt(lineScatter(stroke, line) ** 2 + other);
  const middle = aimOffRad + lineBias(player, line);
  const [a, b, c, d] = line.edges.map((edge) => normalBelow((edge - middle) / sd)) as [
    number,
    number,
    number,
    number,
  ];
  const short = normalBelow((line.leastSpeed - player.speedBias) / stroke.speedShare);
  const gets = 1 - short;
  const [low, high] = line.passes;
  return {
    went: gets * (c - b),
    [low]: gets * (b - a),
    [high]: gets * (d - c),
    untouched: gets * (a + 1 - d),
    short,
  };
}
