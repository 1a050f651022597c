import { DEMO_CATALOGUE } from './demo-catalogue';
import type { ShelfName, Shelves } from './records';

/** Our examples first, in their own order; then the person's, by name as people read numbers. */
export function orderShelf<S extends ShelfName>(
  shelf: S,
  records: readonly Shelves[S][],
): readonly Shelves[S][] {
  const demoIds: readonly string[] = DEMO_CATALOGUE[shelf].map((record) => record.id);
  const place = (id: string) => {
    const index = demoIds.indexOf(id);
    return index < 0 ? demoIds.length : index;
  };
  return [...records].sort(
    (one, other) =>
      place(one.id) - place(other.id) ||
      one.name.localeCompare(other.name, 'en', { numeric: true }) ||
      (one.id < other.id ? -1 : 1),
  );
}
