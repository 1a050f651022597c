import type { DraftStorage } from '../../store/desk-draft';

const KEY = 'leeway.undone-import';

/** Tells an import from the undoing of one: the store keeps what was there before either alike. */
export interface UndoneMark {
  /** When the last undoing was done, ms since 1970; null where it is not known of any. */
  read(): number | null;
  /** Null where there is none any more. */
  write(atMs: number | null): void;
}

/** @param findStorage may throw or give null: then an undoing is told as an import. */
export function createUndoneMark(findStorage: () => DraftStorage | null): UndoneMark {
  return {
    read() {
      try {
        const text = findStorage()?.getItem(KEY) ?? '';
        return /^\d{1,16}$/.test(text) ? Number(text) : null;
      } catch {
        return null;
      }
    },
    write(atMs) {
      try {
        if (atMs === null) findStorage()?.removeItem(KEY);
        else findStorage()?.setItem(KEY, `${atMs}`);
      } catch {
        // Without it nothing is lost but a word.
      }
    },
  };
}
