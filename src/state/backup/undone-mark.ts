import { type FindStorage, notedText } from '../../store/noted-text';

/** Tells an import from the undoing of one: the store keeps what was there before either alike. */
export interface UndoneMark {
  /** When the last undoing was done, ms since 1970; null where it is not known of any. */
  read(): number | null;
  /** Null where there is none any more. */
  write(atMs: number | null): void;
}

/** Without storage an undoing is told as an import, and nothing is lost but a word. */
export function createUndoneMark(findStorage: FindStorage): UndoneMark {
  const text = notedText(findStorage, 'leeway.undone-import');
  return {
    read() {
      const noted = text.get() ?? '';
      return /^\d{1,16}$/.test(noted) ? Number(noted) : null;
    },
    write(atMs) {
      text.set(atMs === null ? null : `${atMs}`);
    },
  };
}
