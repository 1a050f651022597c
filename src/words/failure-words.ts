import type { StoreFailure } from '../store/store-port';

const FAILURES: Readonly<Record<StoreFailure, string>> = {
  full: 'No room left: this change is not kept yet.',
  outdated: 'A newer version is open: reload to go on saving.',
  replaced: 'A backup was brought in elsewhere: reload to go on saving.',
  unavailable: 'This change is not saved yet.',
  'newer-open': 'A newer version is open: reload first.',
  'not-read': 'What is kept could not be read.',
  'last-on-shelf': 'This is the last one here: copy it before deleting it.',
  'nothing-kept': 'There is no import to undo.',
};

/** Why something could not be kept, read or undone. */
export function failureWords(reason: StoreFailure): string {
  return FAILURES[reason];
}

/** Why there is no room for another of a kind. */
export const NO_MORE = 'Leeway keeps 5,000 of a kind at most, for each start reads all of them.';

/** The same where one was to be added. */
export const CROWDED_WORDS = `${NO_MORE} Delete some first.`;
