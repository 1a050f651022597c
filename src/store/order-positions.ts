import type { SavedPosition } from './saved-position';

/** The one changed last first; of those changed at once, by id as people read numbers. */
export function orderPositions(positions: readonly SavedPosition[]): readonly SavedPosition[] {
  return [...positions].sort(
    (one, other) =>
      other.changedAtMs - one.changedAtMs ||
      one.id.localeCompare(other.id, 'en', { numeric: true }) ||
      (one.id < other.id ? -1 : 1),
  );
}
