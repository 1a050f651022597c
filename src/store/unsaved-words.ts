import type { StoreName } from './store-port';
import type { Note } from './unsaved-notes';

const WORDS: Readonly<Record<StoreName, string>> = {
  cues: 'a cue',
  cloths: 'a cloth',
  balls: 'a ball set',
  tables: 'a table',
  attempts: 'a reading',
  positions: 'a position',
  desk: 'your shot',
};

/** "Not kept yet: a reading, your shot." */
export function unsavedWords(notes: readonly Note[]): string {
  return `Not kept yet: ${[...new Set(notes.map(({ store }) => WORDS[store]))].join(', ')}.`;
}
