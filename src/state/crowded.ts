import { MOST_OF_A_KIND, NO_MORE } from '../store/most-of-a-kind';
import { LIST_PROBLEMS } from '../words/list-problems';

/** Why nothing can be added to a list, in one kind line; null where there is room. */
export function crowded(rows: readonly unknown[]): string | null {
  return rows.length < MOST_OF_A_KIND ? null : `${NO_MORE} ${LIST_PROBLEMS.deleteSome}`;
}
