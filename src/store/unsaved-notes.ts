import { isPlainObject } from './mend';
import { type FindStorage, notedText, readNoted } from './noted-text';
import type { RawRow, RawStores } from './read-rows';
import { SHELF_NAMES } from './shelf-names';
import type { StoreName } from './store-port';

const STORES: readonly StoreName[] = [...SHELF_NAMES, 'attempts', 'positions', 'desk'];

/** A change that the database did not take: a row as it should be, or none where it was deleted. */
export interface Note {
  readonly store: StoreName;
  readonly id: string;
  /** The contents that were on screen: see `import-era`; null where none could be read. */
  readonly era: string | null;
  readonly row?: unknown;
}

/** Changes that wait for the database, noted at once where they outlive the page. */
export interface UnsavedNotes {
  /** What this page could not save. */
  readonly mine: readonly Note[];
  /** The same, and what an earlier page or another tab left behind. */
  all(): readonly Note[];
  /** Tells this moment from later ones. */
  mark(): number;
  /** Notes a change as of a moment, unless a later one of the same row is noted. */
  add(note: Note, mark?: number): void;
  /** It is saved, or no longer wanted, as it was at a moment. */
  drop(note: Pick<Note, 'store' | 'id'>, mark?: number): void;
  /** What this page noted belongs to these contents from now on. */
  moveTo(era: string): void;
}

/** Without storage, or room in it, the notes last as long as the page. */
export function createUnsavedNotes(findStorage: FindStorage): UnsavedNotes {
  const text = notedText(findStorage, 'leeway.unsaved');
  let mine: readonly Noted[] = [];
  let count = 0;
  const stored = (): readonly Note[] => {
    const found = readNoted(text);
    return Array.isArray(found) ? found.filter(isNote) : [];
  };
  const isNewer = (note: Pick<Note, 'store' | 'id'>, mark: number) =>
    mine.some((one) => one.store === note.store && one.id === note.id && one.at > mark);
  const store = (notes: readonly Note[]) => {
    text.set(notes.length > 0 ? JSON.stringify(notes) : null);
  };
  const add = (note: Note, mark = count) => {
    if (isNewer(note, mark)) return;
    count += 1;
    mine = [...without(mine, note), { ...note, at: count }];
    store([...without(stored(), note), note]);
  };
  return {
    get mine() {
      return mine;
    },
    all: () => mine.reduce((notes, note) => [...without(notes, note), note], stored()),
    mark: () => count,
    add,
    drop(note, mark = count) {
      const found = stored();
      const left = without(found, note);
      if (isNewer(note, mark)) return;
      mine = without(mine, note);
      if (left.length < found.length) store(left);
    },
    moveTo(era) {
      for (const { at: _, ...note } of mine) add({ ...note, era });
    },
  };
}

type Noted = Note & { readonly at: number };

/**
 * Rows as they are once the notes are carried out, and which of them were. A note from other
 * contents, such as those before an import, only adds what is not there: it must overwrite nothing.
 */
export function withNotes(
  raw: RawStores,
  notes: readonly Note[],
  era: string | null,
): { readonly raw: RawStores; readonly applied: readonly Note[] } {
  const next: { [S in StoreName]?: readonly RawRow[] } = { ...raw };
  const applied = notes.filter((note) => {
    const rows = next[note.store] ?? [];
    const others = rows.filter(({ key }) => key !== note.id);
    const isNew = others.length === rows.length && 'row' in note && note.store !== 'desk';
    if (note.era !== era && !isNew) return false;
    next[note.store] = 'row' in note ? [...others, { key: note.id, value: note.row }] : others;
    return true;
  });
  return { raw: { ...raw, ...next }, applied };
}

function without<N extends Note>(
  notes: readonly N[],
  { store, id }: Pick<Note, 'store' | 'id'>,
): readonly N[] {
  return notes.filter((note) => note.store !== store || note.id !== id);
}

/** A row that does not bear its own key would be refused by the database. */
function isNote(was: unknown): was is Note {
  if (!isPlainObject(was) || typeof was.id !== 'string') return false;
  if (!STORES.some((name) => name === was.store)) return false;
  if (was.era !== null && typeof was.era !== 'string') return false;
  if (!('row' in was)) return was.store !== 'desk';
  return isPlainObject(was.row) && (was.store === 'desk' || was.row.id === was.id);
}
