import { createDatabaseDoor } from './database-door';
import { errorName } from './database-errors';
import { createIndexedDbStore } from './indexed-db-store';
import type * as MemoryStore from './memory-store';
import type { FindStorage } from './noted-text';
import { createNoticeBoard } from './notice-board';
import type { StorePort } from './store-port';
import type { TabChannel } from './tabs/tab-channel';
import { createUnsavedNotes } from './unsaved-notes';

export interface StoreOptions {
  /** Has the store that keeps nothing come: few visits need it. */
  readonly fetchMemory: () => Promise<typeof MemoryStore>;
  readonly databaseName?: string;
  /** How long to wait for the first load before going on without storage, ms. */
  readonly patienceMs?: number;
  readonly findDraftStorage?: FindStorage;
  /** Calls back when the page goes away, perhaps to come back. */
  readonly onPageGone?: (listener: () => void) => void;
  /** To other tabs of the app. */
  readonly channel?: TabChannel;
}

/**
 * The app's store. It falls back on memory, with a notice, where the first load shows that
 * IndexedDB is missing, refuses, or does not answer; it then stays there, so that defaults shown
 * for want of an answer never overwrite what is kept.
 */
export function createStore({
  fetchMemory,
  databaseName = 'leeway',
  patienceMs = 4000,
  findDraftStorage = () => globalThis.localStorage ?? null,
  onPageGone,
  channel,
}: StoreOptions): StorePort {
  const board = createNoticeBoard();
  const door = createDatabaseDoor(databaseName, (event, opened) => {
    if (event !== 'emptied') board.raise(event);
    else if (opened) void kept.refill(opened);
  });
  const notes = createUnsavedNotes(findDraftStorage);
  const kept = createIndexedDbStore(door, board, notes, channel);
  onPageGone?.(kept.leave);
  let load = kept.loadAll;

  const store: StorePort = {
    ...kept,
    async loadAll() {
      try {
        const loaded = await withinTime(load(), patienceMs);
        board.lower('blocked');
        return loaded;
      } catch (error) {
        if (errorName(error) === 'VersionError') board.raise('outdated');
        board.raise(isMissing(error) ? 'not-kept' : 'not-opened');
        const { createMemoryStore } = await fetchMemory();
        const { loadAll, ...memory } = createMemoryStore(board, notes);
        load = loadAll;
        Object.assign(store, memory);
        return await load();
      }
    },
  };
  return store;
}

/** A browser without IndexedDB, or one that forbids it: reloading would not help. */
function isMissing(error: unknown): boolean {
  return globalThis.indexedDB === undefined || errorName(error) === 'SecurityError';
}

/** Settles as the work does, or rejects with a TimeoutError once the time is up. */
async function withinTime<T>(work: Promise<T>, limitMs: number): Promise<T> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const limit = new Promise<never>((_resolve, reject) => {
    const late = new DOMException(`No answer within ${limitMs} ms`, 'TimeoutError');
    timer = setTimeout(() => reject(late), limitMs);
  });
  try {
    return await Promise.race([work, limit]);
  } finally {
    clearTimeout(timer);
  }
}
