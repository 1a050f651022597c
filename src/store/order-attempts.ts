import type { Attempt } from './attempt';

/** The oldest first; of those begun at once, by id. */
export function orderAttempts(attempts: readonly Attempt[]): readonly Attempt[] {
  return [...attempts].sort(
    (one, other) => one.startedAtMs - other.startedAtMs || (one.id < other.id ? -1 : 1),
  );
}
