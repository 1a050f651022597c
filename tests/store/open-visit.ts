import { openDB } from 'idb';
import { createStore } from '../../src/store/create-store';
import type { DraftStorage } from '../../src/store/noted-text';
import type { Cue } from '../../src/store/records';
import type { StoreNotice, StoreNoticeKind } from '../../src/store/store-port';
import { noticeWords } from '../../src/words/store-words';
import { fetchMemory } from '../harness/fetch-memory';

/** The store of the app opened, or opened again, on a device; not loaded yet. */
export function openStore(draftStorage: DraftStorage) {
  const store = createStore({ fetchMemory, findDraftStorage: () => draftStorage });
  const notices: StoreNoticeKind[] = [];
  store.onNotice(({ kind }) => notices.push(kind));
  return { store, notices };
}

/** A visit: the store loaded, the notices that hold, in words, and how the page is left. */
export async function openVisit(findDraftStorage: () => DraftStorage, patienceMs = 20_000) {
  let leave = () => {};
  const onPageGone = (listener: () => void) => {
    leave = listener;
  };
  const store = createStore({ fetchMemory, patienceMs, findDraftStorage, onPageGone });
  const notices = new Map<string, string>();
  store.onNotice(
    (notice: StoreNotice) => notices.set(notice.kind, noticeWords(notice)),
    (kind) => notices.delete(kind),
  );
  const loaded = await store.loadAll();
  return { store, notices, loaded, leave: () => leave() };
}

/** The database as another program would see it. */
export async function rawDatabase() {
  return await openDB('leeway');
}

export const MINE: Cue = {
  id: 'mine',
  name: 'My cue',
  origin: 'by-hand',
  changes: [],
  like: null,
  massRatio: 27,
  tipDiameterM: 0.0127,
  tipRadiusM: 0.0097,
};
