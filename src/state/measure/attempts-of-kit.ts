import type { Attempt } from '../../store/attempt';
import type { AttemptProgress } from './attempt-progress';
import { progressOf } from './attempt-progress';
import { type Played, playedAttempt, type ShelfIndex, sharePart } from './parts-played';

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
