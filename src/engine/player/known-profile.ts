import type { KitSpread } from '../kit/kit-spread';
import { normalBelow } from '../numerics/normal';
import type { StrokeProfile } from '../room/stroke-profile';
import { KIT_SHARE } from './known-player';
import type { PlayerKnowledge } from './learn';
import { levelStroke, type Player, playerOf } from './player-of';
import { lineScatter, type PlainLine } from './shot-line';

/** A mean with what is not known of it, one standard deviation. */
interface Moments {
  readonly mean: number;
  readonly variance: number;
}

/**
 * One player who makes shots about as often as all those do who may be the player: steady errors in
 * their middle, and so much more scatter as they, and the level, are not known.
 *
 * @param question the question's line: how direction and tip add up on an ordinary shot
 * @param spread of the kits that shots were played with
 */
export function knownProfile(
  knowledge: PlayerKnowledge,
  question: Pick<PlainLine, 'perTipM'>,
  spread: Pick<KitSpread, 'massRatio'>,
): StrokeProfile {
  const of = (pick: (player: Player) => number) => momentsOf(knowledge, pick);
  const [aim, full] = [of(({ aimBiasRad }) => aimBiasRad), of(({ fullBiasRad }) => fullBiasRad)];
  const product = of(({ aimBiasRad, fullBiasRad }) => aimBiasRad * fullBiasRad).mean;
  const speed = of(({ speedBias }) => speedBias);
  const speedScatter = of(({ stroke }) => stroke.speedShare ** 2);
  const [aimSd, fullSd] = [Math.sqrt(aim.variance), Math.sqrt(full.variance)];
  const level = levelLike(knowledge, question);
  return {
    ...levelStroke(level),
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
  };
}

/** Half windows on which chances are made alike, by the line's scatter in the middle. */
const HALF_WINDOWS = [0.5, 1, 1.5, 2, 3];
const LEVELS = { least: -5, most: 6 };
const HALVINGS = 20;

/** The level, in prior deviations, at which shots go as often as they do over all there may be. */
function levelLike(knowledge: PlayerKnowledge, question: Pick<PlainLine, 'perTipM'>): number {
  const { mean } = momentsOf(knowledge, ({ stroke }) => Math.log(lineScatter(stroke, question)));
  const windows = HALF_WINDOWS.map((times) => times * Math.exp(mean));
  const shareAt = (sd: number) => sumOf(windows, (half) => 2 * normalBelow(half / sd) - 1);
  const wanted = momentsOf(knowledge, ({ stroke }) => shareAt(lineScatter(stroke, question))).mean;
  let { least, most } = LEVELS;
  for (let halving = 0; halving < HALVINGS; halving++) {
    const level = (least + most) / 2;
    if (shareAt(lineScatter(levelStroke(level), question)) > wanted) least = level;
    else most = level;
  }
  return (least + most) / 2;
}

function sumOf(list: readonly number[], of: (one: number) => number): number {
  return list.reduce((sum, one) => sum + of(one), 0);
}

function momentsOf({ points }: PlayerKnowledge, of: (player: Player) => number): Moments {
  let [mean, square] = [0, 0];
  for (const { unknowns, weight } of points) {
    const value = of(playerOf(unknowns));
    mean += weight * value;
    square += weight * value * value;
  }
  return { mean, variance: Math.max(0, square - mean * mean) };
}

/**
 * What is not known of a kit, as it counts for who is learnt: what is the same shot after shot is
 * among the steady errors by now, and the cue's squirt is as well known as shots with side tell it.
 */
export function spreadBeside(knowledge: PlayerKnowledge, spread: KitSpread): KitSpread {
  const squirt = momentsOf(knowledge, ({ squirtSds }) => squirtSds);
  const shares = Object.entries(spread).map(([name, sd]) => [name, KIT_SHARE * sd]);
  return {
    ...(Object.fromEntries(shares) as KitSpread),
    massRatio: Math.sqrt(squirt.variance) * spread.massRatio,
  };
}
