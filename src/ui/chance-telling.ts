import type { Models } from './app-models';

/** Of whom nothing is known no figure is told: how hard a shot is for most players, in one word. */
export type Telling = 'figures' | 'ease';

/** How chances are told of whoever plays. */
export function tellingOf({ player }: Models<'player'>): Telling {
  return player.isKnown.value ? 'figures' : 'ease';
}

/** From so much on a shot is called easy, or fair, for a player in the middle of all (our judgement). */
const EASY = 0.8;
const FAIR = 0.45;

/** "easy", "fair" or "hard". */
export function easeWords(share: number): string {
  if (share >= EASY) return 'easy';
  return share >= FAIR ? 'fair' : 'hard';
}
