import type { Database, DatabaseDoor } from './database-door';
import { readFailure, writeFailure } from './database-errors';
import { DESK_KEY } from './database-schema';
import type { DeskDraft } from './desk-draft';
import { findImportMs, importContents, newStamp, putBackFormer } from './import-contents';
import { LAST_ON_SHELF } from './last-on-shelf';
import { loadContents, lookThrough } from './load-contents';
import type { NoticeBoard } from './notice-board';
import type { ShelfName } from './records';
import type { DeleteResult, StoreName, StorePort, WriteResult } from './store-port';

/** Waits until the device has it, not only the browser: a flat battery must not cost a cue. */
const STRICT = { durability: 'strict' } as const;

/** A store over IndexedDB. Unlike the port it fills, its `loadAll` rejects where it cannot read. */
export function createIndexedDbStore(
  door: DatabaseDoor,
  board: NoticeBoard,
  draft: DeskDraft,
): StorePort {
  const write = async <R>(
    work: (database: Database) => Promise<R>,
  ): Promise<R | Extract<WriteResult, { ok: false }>> => {
    try {
      return await door.withDatabase(work);
    } catch (error) {
      const failure = writeFailure(error);
      board.raise(failure.reason === 'outdated' ? 'outdated' : 'write-failed');
      return failure;
    }
  };
  return {
    keeps: true,
    async loadAll() {
      const mark = draft.mark();
      const loaded = await door.withDatabase((database) => loadContents(database, draft.read()));
      draft.clearUnlessNewer(mark);
      return loaded;
    },
    putRecord: (shelf, record) => write((database) => putRow(database, shelf, record)),
    deleteRecord: (shelf, id) => write((database) => deleteRow(database, shelf, id)),
    async saveDesk(desk) {
      const mark = draft.mark();
      const result = await write((database) => putRow(database, 'desk', desk, DESK_KEY));
      if (result.ok) draft.clearUnlessNewer(mark);
      return result;
    },
    draftDesk: (desk) => draft.write(desk),
    putAttempt: (attempt) => write((database) => putRow(database, 'attempts', attempt)),
    deleteAttempt: (id) => write((database) => deleteAny(database, 'attempts', id)),
    putPosition: (position) => write((database) => putRow(database, 'positions', position)),
    deletePosition: (id) => write((database) => deleteAny(database, 'positions', id)),
    async readAll() {
      try {
        const contents = await door.withDatabase((database) => lookThrough(database, draft.read()));
        return { ok: true, contents };
      } catch (error) {
        return { ok: false, message: readFailure(error) };
      }
    },
    async importBackup(plan) {
      const [mark, stamp] = [draft.mark(), newStamp()];
      const result = await write((database) => importContents(database, plan, stamp));
      // A desk noted before would otherwise come back over the one just imported.
      if (result.ok && plan.toPut.desk) draft.clearUnlessNewer(mark);
      return result;
    },
    async lastImportMs() {
      return await door.withDatabase(findImportMs).catch(() => null);
    },
    async undoImport() {
      const [mark, stamp] = [draft.mark(), newStamp()];
      const result = await write((database) => putBackFormer(database, stamp));
      if (result.ok) draft.clearUnlessNewer(mark);
      return result;
    },
    onNotice: (listener) => board.onNotice(listener),
  };
}

async function putRow(
  database: Database,
  store: StoreName,
  value: unknown,
  key?: string,
): Promise<WriteResult> {
  const transaction = database.transaction(store, 'readwrite', STRICT);
  const put = transaction.store.put(value, key);
  // Committing now spares a round trip through a page that may be on its way out.
  transaction.commit();
  await Promise.all([put, transaction.done]);
  return { ok: true };
}

async function deleteRow(database: Database, shelf: ShelfName, id: string): Promise<DeleteResult> {
  const transaction = database.transaction(shelf, 'readwrite', STRICT);
  const others = (await transaction.store.getAllKeys()).filter((key) => key !== id);
  if (others.length > 0) await transaction.store.delete(id);
  await transaction.done;
  return others.length > 0 ? { ok: true } : LAST_ON_SHELF;
}

/** Of a store that may be left with nothing. */
async function deleteAny(
  database: Database,
  store: 'attempts' | 'positions',
  id: string,
): Promise<WriteResult> {
  const transaction = database.transaction(store, 'readwrite', STRICT);
  await Promise.all([transaction.store.delete(id), transaction.done]);
  return { ok: true };
}
