import type { Attempt } from '../../store/attempt';
import { PART_OF } from '../../store/kit-fields';
import type { Named, ShelfName } from '../../store/records';
import type { AttemptProgress } from './attempt-progress';
import { progressOf } from './attempt-progress';
import {
  type Played,
  type PlayedAttempt,
  partName,
  playedAttempt,
  type ShelfIndex,
  sharePart,
} from './parts-played';
import { traitsOf } from './trial-traits';

/**
 * The attempts that share a part with a kit, the newest first. One with a record that is gone from
 * its shelf is of no kit any more.
 *
 * @param all the oldest first
 */
export function attemptsOfKit(
  all: readonly Attempt[],
  kit: Played,
  shelves: ShelfIndex,
): readonly AttemptProgress[] {
  return all
    .filter((attempt) => {
      const played = playedAttempt(attempt, shelves);
      return played !== null && sharePart(played, kit);
    })
    .map(progressOf)
    .reverse();
}

/** The newest attempt that waits for its next step, of whatever kit; null where none does. */
export function newestUnfinished(all: readonly Attempt[]): AttemptProgress | null {
  const waiting = all.map(progressOf).filter(({ now, attempt }) => now && !attempt.isStruckOut);
  return waiting.at(-1) ?? null;
}

/** When something that counts was last read, ms; null: never. A shot is as old as its beginning. */
export function lastReadAt(attempts: readonly AttemptProgress[]): number | null {
  const read = attempts.find(
    ({ attempt }) => !attempt.isStruckOut && Object.keys(attempt.readings).length > 0,
  );
  return read?.attempt.startedAtMs ?? null;
}

/** How many shots tell of a record in its present era. */
export function shotsReadOn(
  attempts: readonly PlayedAttempt[],
  shelf: ShelfName,
  { id, changes }: Named,
): number {
  const part = PART_OF[shelf];
  const name = partName(id, changes.length);
  return attempts.filter(
    ({ attempt, parts }) =>
      parts[part] === name && traitsOf(attempt.shot.trial).tells.includes(part),
  ).length;
}
