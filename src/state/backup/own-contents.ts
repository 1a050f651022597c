import type { Contents } from '../../store/contents';
import { SHELF_NAMES } from '../../store/records';

/** Whether anything in it is the person's own doing. */
export function isOwn(contents: Contents): boolean {
  if (contents.attempts.length + contents.played.length > 0) return true;
  if (contents.players.some(({ madeOf10 }) => madeOf10 !== null)) return true;
  return SHELF_NAMES.some((shelf) => contents[shelf].some(({ origin }) => origin === 'by-hand'));
}

/** Whether nothing is lost where something takes its place: no readings, shots, kit or positions. */
export function isBlank(contents: Contents): boolean {
  return !isOwn(contents) && contents.positions.every(({ origin }) => origin === 'invented');
}
