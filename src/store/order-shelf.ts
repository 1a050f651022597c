import { asPeopleRead } from './as-people-read';
import { DEMO_CATALOGUE } from './demo-catalogue';
import type { ShelfName, Shelves } from './records';

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
