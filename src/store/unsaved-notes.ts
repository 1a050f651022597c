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

type RowName = Pick<Note, 'store' | 'id'>;

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
  /** The same with many, as of now. */
  addAll(notes: readonly Note[]): void;
  /** It is saved, or no longer wanted, as it was at a moment. */
  drop(note: RowName, mark?: number): void;
  /** The same with many. */
  dropAll(notes: readonly RowName[], mark: number): void;
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
  const store = (notes: readonly Note[]) => {
    text.set(notes.length > 0 ? JSON.stringify(notes) : null);
  };
  /** Those of which nothing later is noted. */
  const notNewer = <N extends RowName>(notes: readonly N[], mark: number): readonly N[] => {
    const times = new Map(mine.map((note) => [keyOf(note), note.at]));
    return notes.filter((note) => (times.get(keyOf(note)) ?? 0) <= mark);
  };
  const addAll = (given: readonly Note[], mark = count) => {
    const notes = notNewer(given, mark);
    if (notes.length === 0) return;
    count += 1;
    mine = [...without(mine, notes), ...notes.map((note) => ({ ...note, at: count }))];
    store([...without(stored(), notes), ...notes]);
  };
  const dropAll = (given: readonly RowName[], mark = count) => {
    const notes = notNewer(given, mark);
    if (notes.length === 0) return;
    mine = without(mine, notes);
    const found = stored();
    const left = without(found, notes);
    if (left.length < found.length) store(left);
  };
  return {
    get mine() {
      return mine;
    },
    all: () => [...without(stored(), mine), ...mine],
    mark: () => count,
    add: (note, mark) => addAll([note], mark),
    addAll,
    drop: (note, mark) => dropAll([note], mark),
    dropAll,
    moveTo: (era) => addAll(mine.map(({ at: _, ...note }) => ({ ...note, era }))),
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

const keyOf = ({ store, id }: RowName) => `${store} ${id}`;

function without<N extends Note>(notes: readonly N[], gone: readonly RowName[]): readonly N[] {
  const keys = new Set(gone.map(keyOf));
  return notes.filter((note) => !keys.has(keyOf(note)));
}

/** A row that does not bear its own key would be refused by the database. */
function isNote(was: unknown): was is Note {
  if (!isPlainObject(was) || typeof was.id !== 'string') return false;
  if (!STORES.some((name) => name === was.store)) return false;
  if (was.era !== null && typeof was.era !== 'string') return false;
  if (!('row' in was)) return was.store !== 'desk';
  return isPlainObject(was.row) && (was.store === 'desk' || was.row.id === was.id);
}
