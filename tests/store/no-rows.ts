import type { KeptRow, ListName, Lists } from '../../src/store/contents';
import { LIST_NAMES, ofLists } from '../../src/store/stores';

/** Every list, with nothing in it. */
export const NO_ROWS: Lists = ofLists<'rows'>(() => []);

/** The rows of all lists, or of those that are counted. */
export function rowsIn(lists: Lists, counts: (name: ListName) => boolean = () => true) {
  return LIST_NAMES.filter(counts).flatMap((name): readonly KeptRow[] => lists[name]);
}
