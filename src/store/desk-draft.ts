import { isPlainObject } from './mend';
import { type FindStorage, notedText, readNoted } from './noted-text';

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

/** Without storage there are no drafts, and the saves to the database still happen. */
export function createDeskDraft(findStorage: FindStorage): DeskDraft {
  const text = notedText(findStorage, 'leeway.desk-draft');
  let written = 0;
  return {
    write(desk, era) {
      written += 1;
      text.set(JSON.stringify({ era, desk }));
    },
    read(era) {
      const noted = readNoted(text);
      // An older version noted the desk alone.
      if (!isPlainObject(noted) || !('era' in noted)) return noted;
      return noted.era === era ? noted.desk : undefined;
    },
    mark: () => written,
    clearUnlessNewer(mark) {
      if (written === mark) text.set(null);
    },
  };
}
