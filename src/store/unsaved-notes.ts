import type { StoreName } from './contents';
import { freshId } from './fresh-id';
import { isPlainObject } from './mend';
import type { Note } from './note';
import { type FindStorage, notedText, readNoted } from './noted-text';
import type { RawRow, RawStores } from './read-rows';
import { STORE_NAMES } from './stores';
import { settleNote } from './tabs/settle-note';

/** Of one page where it says which, or else of all. */
type RowName = Pick<Note, 'store' | 'id'> & { readonly by?: string | undefined };

/** Changes that wait for the database, noted at once where they outlive the page. */
export interface UnsavedNotes {
  /** Tells what this page notes from what others do. */
  readonly by: string;
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
  const by = freshId();
  let mine: readonly Noted[] = [];
  let count = 0;
  const stored = (): readonly Note[] => {
    const found = readNoted(text);
    const notes = Array.isArray(found) ? found.filter(isNote) : [];
    return notes.map((note) => ({ by: '', ...note }));
  };
  const store = (notes: readonly Note[]) => {
    text.set(notes.length > 0 ? JSON.stringify(notes) : null);
  };
  /** Those of which nothing later is noted. */
  const notNewer = <N extends RowName>(notes: readonly N[], mark: number): readonly N[] => {
    const times = new Map(mine.map((note) => [keyOf(note), note.at]));
    return notes.filter((note) => (times.get(keyOf({ by, ...note })) ?? 0) <= mark);
  };
  const addAll = (given: readonly Note[], mark = count) => {
    const notes = notNewer(given, mark).map((note) => ({ by, ...note }));
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
    by,
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
 * Rows as they are once the notes are carried out, and which changes that takes. A note from other
 * contents, such as those before an import, only adds what is not there: it must overwrite nothing.
 */
export function withNotes(raw: RawStores, notes: readonly Note[], era: string | null): Applied {
  const next: { [S in StoreName]?: readonly RawRow[] } = { ...raw };
  const put = ({ store, id, row }: Note) => {
    const others = (next[store] ?? []).filter(({ key }) => key !== id);
    next[store] = row === undefined ? others : [...others, { key: id, value: row }];
  };
  const left: Note[] = [];
  const applied = notes.flatMap((note) => {
    const present = next[note.store]?.find(({ key }) => key === note.id)?.value;
    const isNew = present === undefined && 'row' in note && note.store !== 'desk';
    const isOfHere = note.era === era;
    const was = isOfHere ? note.was : undefined;
    const changes = isOfHere || isNew ? changesOf(note, was, present) : null;
    if (changes === null) left.push(note);
    for (const change of changes ?? []) put(change);
    return changes ?? [];
  });
  return { raw: { ...raw, ...next }, applied, left };
}

interface Applied {
  readonly raw: RawStores;
  /** Rows as they are written, or to be deleted. */
  readonly applied: readonly Note[];
  /** What cannot be carried out. */
  readonly left: readonly Note[];
}

/** What carrying a note out changes; null where another tab deleted or changed the row meanwhile. */
function changesOf(note: Note, was: unknown, present: unknown): readonly Note[] | null {
  const { store, id, era } = note;
  const settled = settleNote({ ...note, was }, present);
  if (settled.kind === 'deleted') return [{ store, id, era }];
  if (settled.kind !== 'put') return null;
  const { row, copy } = settled;
  const copies = copy ? [{ store, id: copy.id, era, row: copy }] : [];
  return [{ store, id, era, row }, ...copies];
}

const keyOf = ({ store, id, by }: RowName) => JSON.stringify([store, id, by]);

function without<N extends Note>(notes: readonly N[], gone: readonly RowName[]): readonly N[] {
  const keys = new Set(gone.map(keyOf));
  const isGone = ({ store, id, by }: N) =>
    keys.has(keyOf({ store, id })) || keys.has(keyOf({ store, id, by }));
  return notes.filter((note) => !isGone(note));
}

/** A row that does not bear its own key would be refused by the database. */
function isNote(was: unknown): was is Note {
  if (!isPlainObject(was) || typeof was.id !== 'string') return false;
  if (!STORE_NAMES.some((name) => name === was.store)) return false;
  if (was.era !== null && typeof was.era !== 'string') return false;
  if ('by' in was && typeof was.by !== 'string') return false;
  if ('was' in was && !isPlainObject(was.was)) return false;
  if (!('row' in was)) return was.store !== 'desk';
  return isPlainObject(was.row) && (was.store === 'desk' || was.row.id === was.id);
}
