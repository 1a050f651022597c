import { createDatabaseDoor } from './database-door';
import { errorName } from './database-errors';
import { createDeskDraft } from './desk-draft';
import { createIndexedDbStore } from './indexed-db-store';
import { createMemoryStore } from './memory-store';
import type { FindStorage } from './noted-text';
import { createNoticeBoard } from './notice-board';
import type { Loaded, StorePort } from './store-port';
import { createUnsavedNotes } from './unsaved-notes';
import { withinTime } from './within-time';

export interface StoreOptions {
  readonly databaseName?: string;
  /** How long to wait for the first load before going on without storage, ms. */
  readonly patienceMs?: number;
  readonly findDraftStorage?: FindStorage;
}

/**
 * The app's store. It falls back on memory, with a notice, where the first load shows that
 * IndexedDB is missing, refuses, or does not answer; it then stays there, so that defaults shown
 * for want of an answer never overwrite what is kept.
 */
export function createStore({
  databaseName = 'leeway',
  patienceMs = 4000,
  findDraftStorage = () => globalThis.localStorage ?? null,
}: StoreOptions = {}): StorePort {
  const board = createNoticeBoard();
  const door = createDatabaseDoor(databaseName, (event) => board.raise(event));
  const notes = createUnsavedNotes(findDraftStorage);
  const kept = createIndexedDbStore(door, board, createDeskDraft(findDraftStorage), notes);
  let active: StorePort = kept;

  const loadAll = async (): Promise<Loaded> => {
    try {
      const loaded = await withinTime(active.loadAll(), patienceMs);
      board.lower('blocked');
      return loaded;
    } catch (error) {
      if (errorName(error) === 'VersionError') board.raise('outdated');
      board.raise(isMissing(error) ? 'not-kept' : 'not-opened');
      active = createMemoryStore(board, notes);
      return await active.loadAll();
    }
  };

  return {
    get keeps() {
      return active.keeps;
    },
    loadAll,
    putRecord: (shelf, record) => active.putRecord(shelf, record),
    deleteRecord: (shelf, id) => active.deleteRecord(shelf, id),
    saveDesk: (desk) => active.saveDesk(desk),
    draftDesk: (desk) => active.draftDesk(desk),
    putAttempt: (attempt) => active.putAttempt(attempt),
    deleteAttempt: (id) => active.deleteAttempt(id),
    putPosition: (position) => active.putPosition(position),
    deletePosition: (id) => active.deletePosition(id),
    saveUnsaved: () => active.saveUnsaved(),
    readAll: () => active.readAll(),
    importBackup: (plan) => active.importBackup(plan),
    lastImportMs: () => active.lastImportMs(),
    undoImport: () => active.undoImport(),
    formerCopies: () => active.formerCopies(),
    onNotice: (listener, onOver) => board.onNotice(listener, onOver),
  };
}

/** A browser without IndexedDB, or one that forbids it: reloading would not help. */
function isMissing(error: unknown): boolean {
  return globalThis.indexedDB === undefined || errorName(error) === 'SecurityError';
}
