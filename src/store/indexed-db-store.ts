import { beginReading } from './begin-transaction';
import type { Database, DatabaseDoor } from './database-door';
import { errorName, readFailure, writeFailure } from './database-errors';
import { DESK_KEY } from './database-schema';
import { formerCopies } from './former-contents';
import { findImportMs, importContents, newStamp, putBackFormer } from './import-contents';
import { type LoadedEra, loadContents, lookThrough } from './load-contents';
import type { NoticeBoard } from './notice-board';
import { putAllRows } from './put-all-rows';
import { SHELF_NAMES } from './shelf-names';
import type { DeleteResult, Loaded, StoreName, StorePort, WriteResult } from './store-port';
import type { Note, UnsavedNotes } from './unsaved-notes';
import { unsavedWords } from './unsaved-words';
import { deleteRow, putRow } from './write-row';

type Failed = Extract<WriteResult, { ok: false }>;

interface IndexedDbExtras {
  /** The database is empty all of a sudden: what the page knows goes into it again, at once. */
  refill(database: Database): Promise<void>;
  /**
   * The page goes away: notes what is being saved, for the next page to save, and takes the saving
   * back. WebKit may otherwise keep a transaction of a page that is gone, and with it the database
   * from all later pages until the browser is closed.
   */
  leave(): void;
}

/**
 * A store over IndexedDB. What it cannot save it notes beside, until it can. Unlike the port it
 * fills, its `loadAll` rejects where it cannot read.
 */
export function createIndexedDbStore(
  door: DatabaseDoor,
  board: NoticeBoard,
  notes: UnsavedNotes,
): StorePort & IndexedDbExtras {
  let era = '';
  /** What this page has loaded and saved since, by store and id. */
  const known = new Map<string, Note>();
  let refilling: readonly Note[] = [];
  const underWay = new Set<{ readonly note: Note; mark: number }>();

  const tell = ({ reason }: Pick<Failed, 'reason'>) => {
    board.raise(reason === 'unavailable' ? 'write-failed' : reason, unsavedWords(notes.mine));
  };
  const write = async <R>(work: (database: Database) => Promise<R>): Promise<R | Failed> => {
    try {
      return await door.withDatabase(work);
    } catch (error) {
      return writeFailure(error);
    }
  };
  const know = (note: Note) => known.set(`${note.store} ${note.id}`, note);
  const carryOut = async (note: Note & { readonly era: string }): Promise<DeleteResult> => {
    const saving = { note, mark: notes.mark() };
    underWay.add(saving);
    know(note);
    const result = await write((database) =>
      'row' in note ? putRow(database, note, note.row) : deleteRow(database, note),
    );
    underWay.delete(saving);
    if (result.ok || result.reason === 'last-on-shelf') {
      notes.drop(note, saving.mark);
      board.lower('closed', 'deleted');
      if (notes.mine.length === 0) board.lower('full', 'write-failed');
    } else {
      notes.add(note, saving.mark);
      tell(result);
    }
    return result;
  };
  /** Of what may be the last. */
  const keep = async (note: Omit<Note, 'era'>): Promise<WriteResult> => {
    const result = await carryOut({ ...note, era });
    return result.ok || result.reason !== 'last-on-shelf' ? result : { ok: true };
  };
  const put = (store: StoreName, id: string, row: unknown) => keep({ store, id, row });
  const exchange = async <R extends { readonly ok: boolean }>(
    work: (database: Database) => Promise<R>,
  ): Promise<R | Failed> => {
    const result = await write(work);
    if (!result.ok && 'reason' in result && result.reason === 'full') board.raise('full');
    return result;
  };
  const begin = ({ loaded, era: now, applied, left }: LoadedEra, mark: number) => {
    era = now;
    known.clear();
    for (const [store, row] of rowsOf(loaded)) know({ store, id: row.id, era, row });
    know({ store: 'desk', id: DESK_KEY, era, row: loaded.desk });
    notes.dropAll([...applied, ...left], mark);
    if (loaded.repairs.length + loaded.quarantined.length > 0) board.raise('mended');
    return loaded;
  };

  return {
    keeps: true,
    async refill(database) {
      refilling = [...known.values()].filter((note) => 'row' in note);
      try {
        await putAllRows(database, refilling, era);
      } catch (error) {
        // None of it was put: it goes the way of whatever is not saved yet.
        era = '';
        notes.addAll(refilling.map((note) => ({ ...note, era })));
        tell(writeFailure(error));
      }
      refilling = [];
    },
    leave() {
      notes.addAll(refilling.map((note) => ({ ...note, era })));
      for (const saving of underWay) {
        notes.add(saving.note, saving.mark);
        saving.mark = notes.mark();
      }
      door.letGo();
    },
    async loadAll() {
      const [mark, waiting] = [notes.mark(), notes.all()];
      try {
        return begin(await door.withDatabase((one) => loadContents(one, waiting)), mark);
      } catch (error) {
        if (errorName(error) !== 'QuotaExceededError') throw error;
        // What is there can be read all the same; what was waiting goes on waiting.
        board.raise('full');
        const found = await door.withDatabase((one) => lookThrough(one, waiting));
        return begin({ ...found, applied: [], left: [] }, mark);
      }
    },
    putRecord: (shelf, record) => put(shelf, record.id, record),
    deleteRecord: (store, id) => carryOut({ store, id, era }),
    saveDesk: (desk) => put('desk', DESK_KEY, desk),
    draftDesk: (row) => notes.add({ store: 'desk', id: DESK_KEY, era, row }),
    putAttempt: (attempt) => put('attempts', attempt.id, attempt),
    deleteAttempt: (id) => keep({ store: 'attempts', id }),
    putPosition: (position) => put('positions', position.id, position),
    deletePosition: (id) => keep({ store: 'positions', id }),
    async saveUnsaved() {
      for (const note of notes.all()) {
        if (note.era === era) await carryOut({ ...note, era });
      }
    },
    async readAll() {
      try {
        const { contents } = await door.withDatabase((one) => lookThrough(one, notes.all()));
        return { ok: true, contents };
      } catch (error) {
        return { ok: false, message: readFailure(error) };
      }
    },
    async importBackup(plan) {
      const stamp = newStamp();
      const result = await exchange((database) => importContents(database, plan, stamp));
      // What was waiting would otherwise come over the desk just imported.
      if (result.ok && !plan.toPut.desk) notes.moveTo(stamp.id);
      return result;
    },
    async lastImportMs() {
      return await door.withDatabase(findImportMs).catch(() => null);
    },
    async undoImport() {
      const stamp = newStamp();
      return await exchange((database) => putBackFormer(database, stamp));
    },
    async formerCopies() {
      const reading = door.withDatabase((database) =>
        beginReading(database, ['former-contents']).store.getAll(),
      );
      return await reading.then(formerCopies, () => []);
    },
    onNotice: (listener, onOver) => board.onNotice(listener, onOver),
  };
}

function rowsOf({ shelves, attempts, positions }: Loaded) {
  const of = (store: StoreName, rows: readonly { readonly id: string }[]) =>
    rows.map((row) => [store, row] as const);
  return [
    ...SHELF_NAMES.flatMap((shelf) => of(shelf, shelves[shelf])),
    ...of('attempts', attempts),
    ...of('positions', positions),
  ];
}
