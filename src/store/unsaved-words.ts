import type { StoreName } from './contents';
import type { Note } from './note';

const WORDS: { readonly [S in StoreName]?: string } = {
  attempts: 'a reading',
  positions: 'a position',
  desk: 'your shot',
};

/** "Not kept yet: a reading, your shot." */
export function unsavedWords(notes: readonly Note[]): string {
  const words = notes.map(({ store }) => WORDS[store] ?? 'your kit');
  return `Not kept yet: ${[...new Set(words)].join(', ')}.`;
}
