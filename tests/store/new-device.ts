import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import type { DraftStorage } from '../../src/store/noted-text';

/** A browser with nothing in it yet: an empty IndexedDB, and storage for drafts. */
export function newDevice(): DraftStorage {
  globalThis.indexedDB = new IDBFactory();
  return newDraftStorage();
}

/** The browser's Storage, as far as drafts use it. */
export function newDraftStorage(): DraftStorage {
  const items = new Map<string, string>();
  return {
    getItem: (key) => items.get(key) ?? null,
    setItem: (key, value) => void items.set(key, value),
    removeItem: (key) => void items.delete(key),
  };
}
