import { asPeopleRead } from './as-people-read';
import type { SavedPosition } from './saved-position';

/** The one changed last first; of those changed at once, by id as people read numbers. */
export function orderPositions(positions: readonly SavedPosition[]): readonly SavedPosition[] {
  return [...positions].sort(
    (one, other) =>
      other.changedAtMs - one.changedAtMs ||
      asPeopleRead(one.id, other.id) ||
      (one.id < other.id ? -1 : 1),
  );
}
