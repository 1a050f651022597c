/**
 * The rule of a ladder, in one place. Five tries make a set of one shot. All five made: the next set is
 * a step harder. Three missed: it is a step easier, and the set is over at once. Three or four made:
 * as hard again.
 *
 * Up is as likely as down where p^5 = P(at most 2 of 5), at p = 0.698: so a ladder settles where about
 * 7 in 10 are made, whatever the model says of the player. Source: up-down methods, Levitt, J. Acoust.
 * Soc. Am. 49:467 (1971) (from memory); five tries are ours.
 */
export const SET_TRIES = 5;
const MOST_MISSED = 2;

/** What a ladder is aimed at: about so many go. */
const AIMED_AT = 0.7;
/** A step in the logarithm of the odds: from 7 in 10 to 6 in 10 (ours). */
const STEP = 0.45;
/** So far a ladder goes either way: from 19 in 20 to 3 in 20. */
const [LEAST_LEVEL, MOST_LEVEL] = [-5, 6];

/**
 * What a set of tries does to a ladder.
 *
 * @returns 1 a step harder, −1 easier, 0 as hard again; null: it is not over
 */
export function stepAfter(made: number, missed: number): 1 | 0 | -1 | null {
  if (missed > MOST_MISSED) return -1;
  if (made + missed < SET_TRIES) return null;
  return missed === 0 ? 1 : 0;
}

/** A ladder's level after a step. */
export function levelAfter(level: number, step: 1 | 0 | -1): number {
  return Math.min(MOST_LEVEL, Math.max(LEAST_LEVEL, level + step));
}

/** How often a shot at a level should go, as far as the player is known: 0.7 at 0, less above. */
export function chanceAt(level: number): number {
  return 1 / (1 + Math.exp(STEP * level - Math.log(AIMED_AT / (1 - AIMED_AT))));
}
