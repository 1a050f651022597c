import { writeValue } from '../../store/backup/value-text';
import type { Contents, Lists } from '../../store/contents';
import { SHELF_NAMES } from '../../store/records';
import { LISTS, ofLists } from '../../store/stores';

/** Room for a second copy, in characters: browsers give all of a site some millions. */
const ROOM = 200_000;

/** What a row takes beside its own text. */
const ROW_EXTRA = 50;

/** What fits into a second copy, and how many rows do not. */
export interface WithinRoom {
  readonly contents: Contents;
  readonly leftOut: number;
}

/** The kit and the desk, then the newest of each other list in turn, as far as they fit. */
export function withinRoom(contents: Contents, room = ROOM): WithinRoom {
  const size = (row: unknown) => writeValue(row).length + ROW_EXTRA;
  const kit = Object.fromEntries(SHELF_NAMES.map((shelf) => [shelf, contents[shelf]]));
  let left = room - size(kit) - size(contents.desk);
  const fits = (row: unknown) => {
    if (left >= 0) left -= size(row);
    return left >= 0;
  };
  let leftOut = 0;
  const fitting = <T>(rows: readonly T[], isNewestLast: boolean): readonly T[] => {
    const kept = isNewestLast ? [...rows].reverse().filter(fits).reverse() : rows.filter(fits);
    leftOut += rows.length - kept.length;
    return kept;
  };
  const lists: Lists = contents;
  const kept = ofLists<'rows'>((name) =>
    name in kit ? lists[name] : fitting(lists[name], LISTS[name].isNewestLast),
  );
  return { contents: { ...contents, ...kept, setAside: [] }, leftOut };
}
