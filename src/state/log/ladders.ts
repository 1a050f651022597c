import type { Theme } from '../../engine/player/drill-shot';
import { levelAfter, SET_TRIES, stepAfter } from '../../engine/player/staircase';
import type { PlayedRung, PlayedShot } from '../../store/player';
import { isSame } from '../../store/same-value';

/** A shot that was a try on a ladder. */
export interface LadderTry extends PlayedShot {
  readonly drill: { readonly id: string; readonly rung: PlayedRung };
}

/** As many tries make a set at most. */
export const SET_OF = SET_TRIES;

/** How somebody stands on a ladder, as its tries tell: it is kept nowhere else. */
export interface Ladder {
  /** All tries, the oldest first. */
  readonly tries: readonly LadderTry[];
  readonly made: number;
  /** How many steps harder than at first. */
  readonly level: number;
  /** Those of the set that is not over; may be none. */
  readonly set: readonly LadderTry[];
  /** The set before: the next is laid elsewhere. */
  readonly lastSet: readonly LadderTry[];
  /** What that did to the level. */
  readonly lastStep: 1 | 0 | -1;
}

/** Whether a try did all that was asked. */
export function isMade({ result, drill }: Pick<PlayedShot, 'result' | 'drill'>): boolean {
  return result === 'went' && (!drill?.rung?.rest || drill.rung.stopped === 'in');
}

/** @param played all that somebody has played, the oldest first */
export function ladderOf(played: readonly PlayedShot[], theme: Theme): Ladder {
  const tries = played.filter(
    (shot): shot is LadderTry =>
      shot.asMeant && shot.drill?.id === theme && shot.drill.rung !== null,
  );
  let [level, made] = [0, 0];
  let lastStep: Ladder['lastStep'] = 0;
  let [set, lastSet]: (readonly LadderTry[])[] = [[], []];
  for (const one of tries) {
    if (isMade(one)) made += 1;
    // An edit of what was logged before can end a set sooner: what is left of it opens no other.
    if (set?.length === 0 && isSameLie(lastSet?.[0], one)) continue;
    set = isSameLie(set?.[0], one) ? [...(set ?? []), one] : [one];
    const hits = set.filter(isMade).length;
    const step = stepAfter(hits, set.length - hits);
    if (step === null) continue;
    level = levelAfter(level, step);
    lastStep = step;
    [set, lastSet] = [[], set];
  }
  return { tries, made, level, set: set ?? [], lastSet: lastSet ?? [], lastStep };
}

function isSameLie(one: PlayedShot | undefined, other: PlayedShot): boolean {
  if (one === undefined) return false;
  return isSame(one.shot, other.shot) && isSame(placesOf(one), placesOf(other));
}

function placesOf({ position }: PlayedShot) {
  return position && [position.balls, position.goal];
}
