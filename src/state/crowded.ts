import { MOST_OF_A_KIND } from '../store/most-of-a-kind';
import { CROWDED_WORDS } from '../words/failure-words';

/** Why nothing can be added to a list, in one kind line; null where there is room. */
export function crowded(rows: readonly unknown[]): string | null {
  return rows.length < MOST_OF_A_KIND ? null : CROWDED_WORDS;
}
