import { writeValue } from '../../store/backup/write-value';
import type { Contents } from '../../store/store-port';

/** Room for a second copy, in characters: browsers give all of a site some millions. */
const ROOM = 200_000;

/** What a row takes beside its own text. */
const ROW_EXTRA = 50;

/** What fits into a second copy, and how many rows do not. */
export interface WithinRoom {
  readonly contents: Contents;
  readonly leftOut: number;
}

/** The kit and the desk, then the newest readings, then positions, as far as they fit. */
export function withinRoom(contents: Contents, room = ROOM): WithinRoom {
  const { shelves, desk, attempts, positions } = contents;
  const size = (row: unknown) => writeValue(row).length + ROW_EXTRA;
  let left = room - size(shelves) - size(desk);
  const fits = (row: unknown) => {
    if (left >= 0) left -= size(row);
    return left >= 0;
  };
  const kept = [...attempts].reverse().filter(fits).reverse();
  const laid = positions.filter(fits);
  const leftOut = attempts.length + positions.length - kept.length - laid.length;
  return { contents: { ...contents, attempts: kept, positions: laid, setAside: [] }, leftOut };
}
