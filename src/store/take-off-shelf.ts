import type { ShelfName, Shelves } from './records';

/** A shelf with one record fewer. */
export interface TakenOff<S extends ShelfName> {
  readonly taken: Shelves[S];
  readonly rest: readonly Shelves[S][];
  /** What comes into play if the record was: the next on the shelf, or the last. */
  readonly successorId: string;
}

/** Takes a record off a shelf; null where it is the only one, or not there. */
export function takeOffShelf<S extends ShelfName>(
  records: readonly Shelves[S][],
  id: string,
): TakenOff<S> | null {
  const index = records.findIndex((record) => record.id === id);
  const taken = records[index];
  const rest = records.filter((record) => record.id !== id);
  const successor = rest[Math.min(index, rest.length - 1)];
  return taken && successor ? { taken, rest, successorId: successor.id } : null;
}
