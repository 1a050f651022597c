import type { EntryWord } from './keypad-draft';

export const WAY_ARROWS: Readonly<Record<EntryWord, string>> = {
  left: '←',
  right: '→',
  on: '↑',
  back: '↓',
  tapped: '',
  '': '',
};

/** Which way a reading goes, as an arrow and a word together. Nothing where it goes none. */
export function WayWord({ word }: { word: EntryWord }) {
  if (WAY_ARROWS[word] === '') return null;
  return (
    <span class="side-word">
      <span aria-hidden="true">{WAY_ARROWS[word]}</span> {word}
    </span>
  );
}
