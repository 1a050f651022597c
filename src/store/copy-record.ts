import { LONGEST_NAME } from './parse-named';
import type { ShelfName, Shelves } from './records';

/** The person's own copy of a record, under a name the shelf does not have yet. */
export function copyRecord<S extends ShelfName>(
  record: Shelves[S],
  id: string,
  takenNames: readonly string[],
): Shelves[S] {
  return { ...record, id, name: copyName(record.name, takenNames), origin: 'by-hand' };
}

function copyName(name: string, takenNames: readonly string[]): string {
  for (let count = 1; count <= takenNames.length; count += 1) {
    const candidate = withSuffix(name, count === 1 ? ' (copy)' : ` (copy ${count})`);
    if (!takenNames.includes(candidate)) return candidate;
  }
  return withSuffix(name, ` (copy ${takenNames.length + 1})`);
}

function withSuffix(name: string, suffix: string): string {
  return name.slice(0, LONGEST_NAME - suffix.length).trimEnd() + suffix;
}
