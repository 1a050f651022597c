import type { Desk } from './records';

const KEY = 'leeway.desk-draft';

/** A desk noted at once, in case the page goes away before the database has it. */
export interface DeskDraft {
  write(desk: Desk): void;
  /** Undefined where there is none, or none that can be read. */
  read(): unknown;
  /** Tells this moment from later ones, for {@link clearUnlessNewer}. */
  mark(): number;
  /** Drops the draft, unless another was written after the mark. */
  clearUnlessNewer(mark: number): void;
}

/** The part of the browser's Storage that is used. */
export type DraftStorage = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/**
 * @param findStorage may throw or give null: without storage there are no drafts, and the saves
 * to the database still happen.
 */
export function createDeskDraft(findStorage: () => DraftStorage | null): DeskDraft {
  let written = 0;
  return {
    write(desk) {
      written += 1;
      attempt(() => findStorage()?.setItem(KEY, JSON.stringify(desk)));
    },
    read() {
      return attempt((): unknown => {
        const text = findStorage()?.getItem(KEY);
        return typeof text === 'string' ? JSON.parse(text) : undefined;
      });
    },
    mark: () => written,
    clearUnlessNewer(mark) {
      if (written === mark) attempt(() => findStorage()?.removeItem(KEY));
    },
  };
}

/** Storage that is full, forbidden or garbled is the same here as storage that is not there. */
function attempt<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch {
    return undefined;
  }
}
