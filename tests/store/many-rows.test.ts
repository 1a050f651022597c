import { deleteDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createStore } from '../../src/store/create-store';
import { DEMO_CATALOGUE } from '../../src/store/demo-catalogue';
import type { DraftStorage } from '../../src/store/noted-text';
import { orderShelf } from '../../src/store/order-rows';
import { fetchMemory } from '../harness/fetch-memory';
import { contentsOf, fill, importText, textOf } from './backup/import-text';
import { CONTENTS } from './backup/invented-contents';
import { manyContents } from './backup/many-contents';
import { CURVE_ATTEMPT } from './invented-attempts';
import { newDevice } from './new-device';

/** Few enough for a database that is slow, many beside what is done to all of them at once. */
const ROWS = 25;
const MANY = manyContents(ROWS);

let draftStorage: DraftStorage;
beforeEach(() => {
  draftStorage = newDevice();
});
afterEach(() => {
  vi.restoreAllMocks();
});

async function openApp() {
  const store = createStore({
    fetchMemory,
    findDraftStorage: () => draftStorage,
    patienceMs: 20_000,
  });
  const loaded = await store.loadAll();
  return { store, loaded };
}

/** How many transactions that write are begun from now on. */
function countWriting() {
  const { transaction } = IDBDatabase.prototype;
  const spy = vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (
    this: IDBDatabase,
    ...given
  ) {
    return transaction.apply(this, given);
  });
  return () => spy.mock.calls.filter(([, mode]) => mode === 'readwrite').length;
}

/** The most requests that waited for an answer at once, of puts from now on. */
function countWaiting() {
  const { put } = IDBObjectStore.prototype;
  let [waiting, most] = [0, 0];
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
    this: IDBObjectStore,
    ...given
  ) {
    const request = put.apply(this, given);
    waiting += 1;
    most = Math.max(most, waiting);
    request.addEventListener('success', () => {
      waiting -= 1;
    });
    return request;
  });
  return () => most;
}

describe('many rows', () => {
  it('are asked for together when they are brought in, and when that is undone', async () => {
    const { store } = await openApp();
    await fill(store, MANY);
    const text = await textOf(store);
    await fill(store, CONTENTS);
    const most = countWaiting();
    await importText(store, text, 'replace');
    expect(most()).toBeGreaterThanOrEqual(ROWS);
    vi.restoreAllMocks();
    const undone = countWaiting();
    await store.undoImport();
    await store.undoImport();
    expect(undone()).toBeGreaterThanOrEqual(ROWS);
    expect(await textOf(store)).toBe(text);
  });

  it('go back into a database that was emptied in one transaction, with the change that found it', async () => {
    const first = await openApp();
    await fill(first.store, MANY);
    const { store } = await openApp();
    const before = await contentsOf(store);
    await deleteDB('leeway');
    const writing = countWriting();
    expect(await store.put('attempts', CURVE_ATTEMPT)).toEqual({ ok: true });
    await store.saveUnsaved();
    expect(writing()).toBe(2);
    const { attempts, ...rest } = await contentsOf((await openApp()).store);
    expect(attempts).toHaveLength(before.attempts.length + 1);
    expect(rest).toEqual({ ...before, attempts: undefined, setAside: [] });
  });

  it('are noted together where there is no room for them any more, and saved by the next visit', async () => {
    const first = await openApp();
    await fill(first.store, MANY);
    const { store } = await openApp();
    await deleteDB('leeway');
    const noting = vi.spyOn(draftStorage, 'setItem');
    const { put } = IDBObjectStore.prototype;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
      this: IDBObjectStore,
      ...given
    ) {
      if (this.transaction.mode === 'versionchange') return put.apply(this, given);
      throw new DOMException('no room', 'QuotaExceededError');
    });
    expect(await store.put('attempts', CURVE_ATTEMPT)).toMatchObject({ ok: false });
    expect(noting.mock.calls.length).toBeLessThanOrEqual(3);
    vi.restoreAllMocks();
    const dropping = [vi.spyOn(draftStorage, 'setItem'), vi.spyOn(draftStorage, 'removeItem')];
    const { loaded } = await openApp();
    expect(loaded.attempts).toHaveLength(MANY.attempts.length + 1);
    expect(dropping.flatMap(({ mock }) => mock.calls).length).toBeLessThanOrEqual(2);
  });

  it('are ordered by one comparer, which is made but once', () => {
    const comparing = vi.spyOn(String.prototype, 'localeCompare');
    const [first, ...others] = orderShelf('cues', [...MANY.cues].reverse());
    expect(first?.id).toBe(DEMO_CATALOGUE.cues[0]?.id);
    expect(others.slice(-2).map(({ name }) => name)).toEqual([
      `Cue ${ROWS - 1}`,
      'My “good” cue – №1',
    ]);
    expect(comparing).not.toHaveBeenCalled();
  });
});
