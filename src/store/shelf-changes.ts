import { LONGEST_NAME } from './parse-named';
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

/**
 * A copy of a record to change, under a name the shelf does not have yet. Its numbers come from where
 * the record's did: a copy of an invented example is invented until a number of it is changed. What
 * happened to the record has not happened to the copy, which starts from what was measured of it.
 */
export function copyRecord<S extends ShelfName>(
  record: Shelves[S],
  id: string,
  takenNames: readonly string[],
  what?: string,
): Shelves[S] {
  const name = copyName(record.name, takenNames, what);
  return { ...record, id, name, changes: [], like: record.id };
}

/** "Name (copy)", or "Name (copy 2)" and so on where that is taken. */
export function copyName(name: string, takenNames: readonly string[], what = 'copy'): string {
  for (let count = 1; count <= takenNames.length; count += 1) {
    const candidate = withSuffix(name, count === 1 ? ` (${what})` : ` (${what} ${count})`);
    if (!takenNames.includes(candidate)) return candidate;
  }
  return withSuffix(name, ` (${what} ${takenNames.length + 1})`);
}

/** A name as it is where nobody has it, else as that of a copy. */
export function freeCopyName(name: string, takenNames: readonly string[], what: string): string {
  return takenNames.includes(name) ? copyName(name, takenNames, what) : name;
}

function withSuffix(name: string, suffix: string): string {
  return name.slice(0, LONGEST_NAME - suffix.length).trimEnd() + suffix;
}
