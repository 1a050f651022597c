import type { StoreName } from './contents';
import { attemptOn, type DatabaseDoor } from './database-door';
import { errorName, readFailure } from './database-errors';
import { type Database, DESK_KEY } from './database-schema';
import { formerCopies } from './former-contents';
import { findImportMs, importContents, newStamp, putBackFormer } from './import-contents';
import { type LoadedEra, loadContents, lookThrough } from './load-contents';
import type { Note } from './note';
import type { NoticeBoard } from './notice-board';
import type { Failed, Loaded, StorePort, WriteResult } from './store-port';
import { LIST_NAMES } from './stores';
import { createRowSaver, type KeptAt } from './tabs/row-saver';
import type { TabChannel } from './tabs/tab-channel';
import { beginReading } from './transactions';
import type { UnsavedNotes } from './unsaved-notes';

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
  channel: TabChannel | null = null,
): StorePort & IndexedDbExtras {
  const saver = createRowSaver({ door, board, notes, channel });

  /** Of what may be the last. */
  const keep = async (store: StoreName, id: string, row?: unknown): Promise<WriteResult> => {
    const result = await saver.save(store, id, row);
    return result.ok || result.reason !== 'last-on-shelf' ? result : { ok: true };
  };
  const exchange = async <R extends { readonly ok: boolean }>(
    work: (database: Database) => Promise<R>,
  ): Promise<R | Failed> => {
    const result = await attemptOn(door, work);
    if (!result.ok && 'reason' in result && result.reason === 'full') board.raise('full');
    return result;
  };
  const begin = (found: LoadedEra, mark: number, waiting: readonly Note[] = []) => {
    const { loaded, era, applied } = found;
    saver.begin(era, rowsOf(loaded));
    for (const { store, id, row } of applied) {
      // It was not waiting itself: another tab's is kept beside one that was.
      const isCopy = !waiting.some((note) => note.store === store && note.id === id);
      if (isCopy) saver.tellOfCopy({ store, id, row });
    }
    notes.dropAll(waiting, mark);
    if (loaded.repairs.length + loaded.quarantined.length > 0) board.raise('mended');
    return loaded;
  };

  return {
    keeps: true,
    refill: saver.refill,
    leave() {
      saver.noteUnderWay();
      door.letGo();
    },
    async loadAll() {
      const mark = notes.mark();
      let waiting: readonly Note[] = [];
      try {
        // The database is opened beside the page, while the page waits for its notes.
        const finding = door.withDatabase((one) => loadContents(one, waiting));
        waiting = notes.all();
        const found = await finding;
        return begin(found, mark, waiting);
      } catch (error) {
        if (errorName(error) !== 'QuotaExceededError') throw error;
        // What is there can be read all the same; what was waiting goes on waiting.
        board.raise('full');
        const found = await door.withDatabase((one) => lookThrough(one, waiting));
        return begin({ ...found, applied: [], left: [] }, mark);
      }
    },
    put: (list, row) => keep(list, row.id, row),
    delete: (list, id) => saver.save(list, id),
    saveDesk: (desk) => keep('desk', DESK_KEY, desk),
    draftDesk: (row) => saver.draft({ store: 'desk', id: DESK_KEY, row }),
    saveUnsaved: saver.saveUnsaved,
    onElsewhere: saver.onElsewhere,
    answerElsewhere: saver.answer,
    async readAll() {
      try {
        const { contents } = await door.withDatabase((one) => lookThrough(one, notes.all()));
        return { ok: true, contents };
      } catch (error) {
        return readFailure(error);
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

function rowsOf(loaded: Loaded): readonly KeptAt[] {
  return [
    ...LIST_NAMES.flatMap((store) => loaded[store].map((row) => ({ store, id: row.id, row }))),
    { store: 'desk', id: DESK_KEY, row: loaded.desk },
  ];
}
