import { isPlainObject } from './mend';

const KEY = 'leeway.desk-draft';

/** A desk noted at once, in case the page goes away before the database has it. */
export interface DeskDraft {
  /** @param era of which contents it is: see `import-era` */
  write(desk: unknown, era: string): void;
  /** Undefined where there is none that can be read, or it is from before an import. */
  read(era: string): unknown;
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
    write(desk, era) {
      written += 1;
      attempt(() => findStorage()?.setItem(KEY, JSON.stringify({ era, desk })));
    },
    read(era) {
      return attempt((): unknown => {
        const noted: unknown = JSON.parse(findStorage()?.getItem(KEY) ?? '{}');
        // An older version noted the desk alone.
        if (!isPlainObject(noted) || !('era' in noted))
          return 'shot' in Object(noted) ? noted : undefined;
        return noted.era === era ? noted.desk : undefined;
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
