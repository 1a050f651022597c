import type { KitSpread } from '../kit/kit-spread';
import type { LikelyStroke, StrokeProfile } from '../room/stroke-profile';
import { KIT_SHARE } from './known-player';
import { figureOf, type PlayerKnowledge } from './learn';
import { LEVEL, levelStroke, type Player, playerOf } from './player-of';
import type { PlainLine } from './shot-line';
import { type SomePlayers, somePlayers } from './some-players';
import { momentsOf, weighedPlayers } from './weighed-players';

/**
 * One player in the middle of all that may be the player, with all of them: what cannot be told by one,
 * that great errors go with steady strokes and a cue's squirt with either, is in the chances alone.
 *
 * @param some of them, as likely each
 * @param spread of the kits that shots were played with
 */
export function knownProfile(
  knowledge: PlayerKnowledge,
  some: SomePlayers,
  spread: Pick<KitSpread, 'massRatio'>,
): StrokeProfile {
  const players = weighedPlayers(knowledge);
  const of = (pick: (player: Player) => number) => momentsOf(players, pick);
  const [aim, full] = [of(({ aimBiasRad }) => aimBiasRad), of(({ fullBiasRad }) => fullBiasRad)];
  const product = of(({ aimBiasRad, fullBiasRad }) => aimBiasRad * fullBiasRad).mean;
  const speed = of(({ speedBias }) => speedBias);
  const speedScatter = of(({ stroke }) => stroke.speedShare ** 2);
  const [aimSd, fullSd] = [Math.sqrt(aim.variance), Math.sqrt(full.variance)];
  const { value: level } = figureOf(knowledge, (unknowns) => unknowns[LEVEL] ?? 0);
  const { value: tipM } = figureOf(knowledge, (unknowns) => playerOf(unknowns).stroke.tipM);
  const timesOf = ({ squirtSds }: Player) => Math.exp(spread.massRatio * squirtSds);
  return {
    ...levelStroke(level),
    tipM,
    speedShare: Math.sqrt(speedScatter.mean + speed.variance),
    steady: {
      aimRad: aim.mean,
      fullRad: full.mean,
      speedShare: speed.mean,
      massRatioTimes: Math.exp(spread.massRatio * of(({ squirtSds }) => squirtSds).mean),
      unsure: {
        aimRad: aimSd,
        fullRad: fullSd,
        correlation: (product - aim.mean * full.mean) / (aimSd * fullSd),
      },
    },
    likely: some.map((unknowns) => likelyStroke(playerOf(unknowns), timesOf)),
  };
}

function likelyStroke(player: Player, timesOf: (player: Player) => number): LikelyStroke {
  const { stroke, aimBiasRad, fullBiasRad, speedBias } = player;
  const { directionRad, tipM, speedShare } = stroke;
  return [
    kept(directionRad),
    kept(tipM),
    kept(speedShare),
    kept(aimBiasRad),
    kept(fullBiasRad),
    kept(speedBias),
    kept(timesOf(player)),
  ];
}

/** As far as it tells: a profile is kept and sent. */
function kept(value: number): number {
  return Number(value.toPrecision(4));
}

/**
 * What is not known of a kit, as it counts for who is learnt: what is the same shot after shot is
 * among the steady errors by now, and the cue's squirt is as well known as shots with side tell it.
 */
export function spreadBeside(knowledge: PlayerKnowledge, spread: KitSpread): KitSpread {
  const squirt = momentsOf(weighedPlayers(knowledge), ({ squirtSds }) => squirtSds);
  const shares = Object.entries(spread).map(([name, sd]) => [name, KIT_SHARE * sd]);
  return {
    ...(Object.fromEntries(shares) as KitSpread),
    massRatio: Math.sqrt(squirt.variance) * spread.massRatio,
  };
}

/** Who stands for all that may be the player, and what is not known of the kit beside that. */
export interface StandIn {
  readonly some: SomePlayers;
  readonly profile: StrokeProfile;
  readonly spread: KitSpread;
}

/**
 * What a chance is told by, wherever one is: at a door, on Shot, of a way, of a pocket.
 *
 * @param question the question's line
 * @param spread of the kit that shots are played with
 */
export function standIn(
  knowledge: PlayerKnowledge,
  question: PlainLine,
  spread: KitSpread,
): StandIn {
  const some = somePlayers(knowledge, question);
  return {
    some,
    profile: knownProfile(knowledge, some, spread),
    spread: spreadBeside(knowledge, spread),
  };
}
