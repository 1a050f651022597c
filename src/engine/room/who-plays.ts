import type { Task } from '../goal/task';
import type { Kit } from '../kit/kit';
import type { KitQuantity, KitSpread } from '../kit/kit-spread';
import type { Stroke } from '../stroke/stroke';
import { asLikely, type InPlay, inPlay } from './drawn-stroke';
import type { StrokeProfile } from './stroke-profile';

/** Who plays a stroke of so many that are drawn, and with what. */
export interface WhoPlays {
  /** The middle of all who may be the player. */
  readonly middle: InPlay;
  /** @param draw from 0, below the number of draws */
  at(draw: number): InPlay;
  /** Whether a quantity of the kit is still to be drawn: each who may be the player has a cue of their own. */
  isDrawn(quantity: KitQuantity): boolean;
}

/**
 * The middle of all who may be the player, or each of them in turn, as often; with a cue that is known,
 * all with it.
 *
 * @param thinSide of the task
 */
export function whoPlays(
  meant: Stroke,
  player: StrokeProfile,
  known: Kit,
  { massRatio }: KitSpread,
  thinSide: Task['thinSide'],
  draws: number,
): WhoPlays {
  const middle = inPlay(meant, player, known, thinSide);
  const { likely } = player;
  if (likely === undefined) return { middle, at: () => middle, isDrawn: () => true };
  return {
    middle,
    at(draw) {
      const one = likely[Math.floor(((draw + 0.5) * likely.length) / draws)];
      if (one === undefined) return middle;
      const who = inPlay(meant, asLikely(player, one), known, thinSide);
      return massRatio === 0 ? { ...who, kit: middle.kit } : who;
    },
    isDrawn: (quantity) => quantity !== 'massRatio',
  };
}
