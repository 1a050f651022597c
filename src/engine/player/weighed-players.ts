import type { PlayerKnowledge } from './learn';
import { type Player, playerOf } from './player-of';

/** One of those who may be the player, and how likely that is. */
export interface WeighedPlayer extends Player {
  readonly weight: number;
}

/** All that may be the player. */
export function weighedPlayers({ points }: PlayerKnowledge): readonly WeighedPlayer[] {
  return points.map(({ unknowns, weight }) => ({ ...playerOf(unknowns), weight }));
}

/** A mean with what is not known of it. */
export interface Moments {
  readonly mean: number;
  readonly variance: number;
}

export function momentsOf<W extends { readonly weight: number }>(
  all: readonly W[],
  of: (one: W) => number,
): Moments {
  let [sum, mean, square] = [0, 0, 0];
  for (const one of all) {
    const [value, { weight }] = [of(one), one];
    sum += weight;
    mean += weight * value;
    square += weight * value * value;
  }
  mean /= sum;
  return { mean, variance: Math.max(0, square / sum - mean * mean) };
}
