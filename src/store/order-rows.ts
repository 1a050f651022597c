import type { Attempt } from './attempt';
import { DEMO_CATALOGUE } from './demo-catalogue';
import type { PlayedShot, Player } from './player';
import type { ShelfName, Shelves } from './records';
import type { SavedPosition } from './saved-position';

let collator: Intl.Collator | undefined;

/**
 * Orders texts as people read the numbers in them: "Cue 2" before "Cue 10". The collator is made once,
 * for that costs as much as thousands of comparisons, and only where two names of the person's own
 * are to be compared: it is a tenth of a start.
 */
function asPeopleRead(one: string, other: string): number {
  collator ??= new Intl.Collator('en', { numeric: true });
  return collator.compare(one, other);
}

/** Our examples first, in their own order; then the person's, by name as people read numbers. */
export function orderShelf<S extends ShelfName>(
  shelf: S,
  records: readonly Shelves[S][],
): readonly Shelves[S][] {
  const demos = DEMO_CATALOGUE[shelf];
  const places = new Map<string, number>(demos.map(({ id }, place) => [id, place]));
  const place = (id: string) => places.get(id) ?? demos.length;
  return [...records].sort(
    (one, other) =>
      place(one.id) - place(other.id) ||
      asPeopleRead(one.name, other.name) ||
      (one.id < other.id ? -1 : 1),
  );
}

/** The oldest first; of those begun at once, by id. */
export function orderAttempts(attempts: readonly Attempt[]): readonly Attempt[] {
  return [...attempts].sort(
    (one, other) => one.startedAtMs - other.startedAtMs || (one.id < other.id ? -1 : 1),
  );
}

/** The one changed last first; of those changed at once, by id: "position-2" before "position-10". */
export function orderPositions(positions: readonly SavedPosition[]): readonly SavedPosition[] {
  return [...positions].sort(
    (one, other) =>
      other.changedAtMs - one.changedAtMs ||
      one.id.length - other.id.length ||
      (one.id < other.id ? -1 : 1),
  );
}

/** The one that was there first; of those made at once, by name as people read numbers. */
export function orderPlayers(players: readonly Player[]): readonly Player[] {
  return [...players].sort(
    (one, other) =>
      one.createdAtMs - other.createdAtMs ||
      asPeopleRead(one.name, other.name) ||
      (one.id < other.id ? -1 : 1),
  );
}

/** The oldest first; of those played at once, by id. */
export function orderPlayed(played: readonly PlayedShot[]): readonly PlayedShot[] {
  return [...played].sort((one, other) => one.atMs - other.atMs || (one.id < other.id ? -1 : 1));
}
