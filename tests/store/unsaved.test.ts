import { forceCloseDatabase } from 'fake-indexeddb';
import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { DEFAULT_DESK } from '../../src/store/default-desk';
import type { DraftStorage } from '../../src/store/noted-text';
import { contentsOf } from './backup/import-text';
import { MY_CUE } from './backup/invented-contents';
import { CURVE_ATTEMPT, LATER_ATTEMPT } from './invented-attempts';
import { newDevice } from './new-device';
import { openVisit } from './open-visit';

let draftStorage: DraftStorage;
beforeEach(() => {
  draftStorage = newDevice();
});
afterEach(() => {
  vi.restoreAllMocks();
});

const openApp = (find = () => draftStorage, patienceMs?: number) => openVisit(find, patienceMs);

/** Every write fails with an error of this name, until the mocks are restored. */
function failWrites(name: string): void {
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw new DOMException('not now', name);
  });
}

/** Every connection says that it is dead, the one that is opened anew too. */
function killEveryConnection(): void {
  vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(() => {
    throw new DOMException('Connection to Indexed Database server lost', 'UnknownError');
  });
}

const waiting = () => draftStorage.getItem('leeway.unsaved');

describe('what is being saved when the page goes away', () => {
  it('waits for the next visit, should this one not come back', async () => {
    const { store, leave } = await openApp();
    void store.put('attempts', CURVE_ATTEMPT);
    leave();
    killEveryConnection();
    expect(waiting()).toContain(CURVE_ATTEMPT.id);
    vi.restoreAllMocks();
    const next = await openApp();
    expect(next.loaded.attempts).toEqual([CURVE_ATTEMPT]);
  });

  it('is saved after all where it does, and waits no longer', async () => {
    const { store, leave, notices } = await openApp();
    const saving = store.put('attempts', CURVE_ATTEMPT);
    await Promise.resolve();
    leave();
    expect(waiting()).toContain(CURVE_ATTEMPT.id);
    expect(await saving).toEqual({ ok: true });
    expect(waiting()).toBeNull();
    expect(notices.size).toBe(0);
    const next = await openApp();
    expect(next.loaded.attempts).toEqual([CURVE_ATTEMPT]);
  });
});

describe('what the database does not take', () => {
  it('is saved by the next visit, where even a new connection is dead', async () => {
    const { store, notices } = await openApp();
    killEveryConnection();
    expect(await store.put('attempts', CURVE_ATTEMPT)).toMatchObject({ reason: 'unavailable' });
    expect(await store.put('cues', MY_CUE)).toMatchObject({ reason: 'unavailable' });
    expect(notices.get('write-failed')).toMatch(/Not kept yet: a reading, your kit\.$/);
    vi.restoreAllMocks();
    const next = await openApp();
    expect(next.loaded.attempts).toEqual([CURVE_ATTEMPT]);
    expect(next.loaded.cues).toContainEqual(MY_CUE);
    expect(waiting()).toBeNull();
    const raw = await openDB('leeway');
    expect(await raw.get('attempts', CURVE_ATTEMPT.id)).toEqual(CURVE_ATTEMPT);
    raw.close();
  });

  it('is saved as soon as it is tried again with room, and the notice is taken down', async () => {
    const { store, notices } = await openApp();
    failWrites('QuotaExceededError');
    expect(await store.put('attempts', CURVE_ATTEMPT)).toMatchObject({ reason: 'full' });
    await store.saveUnsaved();
    expect(notices.get('full')).toMatch(/full\. Not kept yet: a reading\.$/);
    vi.restoreAllMocks();
    await store.saveUnsaved();
    expect(notices.size).toBe(0);
    expect(waiting()).toBeNull();
    expect((await openApp()).loaded.attempts).toEqual([CURVE_ATTEMPT]);
  });

  it('is in a backup all the same', async () => {
    const { store } = await openApp();
    failWrites('QuotaExceededError');
    await store.put('attempts', CURVE_ATTEMPT);
    expect((await contentsOf(store)).attempts).toEqual([CURVE_ATTEMPT]);
  });

  it('is the last of several changes, and nothing where the last was a deletion', async () => {
    const { store } = await openApp();
    await store.put('attempts', CURVE_ATTEMPT);
    failWrites('UnknownError');
    await store.put('attempts', { ...CURVE_ATTEMPT, isStruckOut: true });
    await store.put('attempts', LATER_ATTEMPT);
    vi.restoreAllMocks();
    vi.spyOn(IDBObjectStore.prototype, 'delete').mockImplementation(() => {
      throw new DOMException('not now', 'UnknownError');
    });
    await store.delete('attempts', LATER_ATTEMPT.id);
    vi.restoreAllMocks();
    const { loaded } = await openApp();
    expect(loaded.attempts).toEqual([{ ...CURVE_ATTEMPT, isStruckOut: true }]);
  });

  it('is nothing any more once a later change of the same row is saved', async () => {
    const { store } = await openApp();
    failWrites('UnknownError');
    await store.put('attempts', CURVE_ATTEMPT);
    vi.restoreAllMocks();
    await store.put('attempts', { ...CURVE_ATTEMPT, isStruckOut: true });
    expect(waiting()).toBeNull();
  });

  it('is saved while the page lasts where it cannot be noted either', async () => {
    const { store } = await openApp(() => {
      throw new DOMException('denied', 'SecurityError');
    });
    failWrites('UnknownError');
    await store.put('attempts', CURVE_ATTEMPT);
    vi.restoreAllMocks();
    await store.saveUnsaved();
    expect((await openApp()).loaded.attempts).toEqual([CURVE_ATTEMPT]);
  });

  it('never keeps the rest from being read where there is still no room for it', async () => {
    const before = await openApp();
    await before.store.put('cues', MY_CUE);
    failWrites('QuotaExceededError');
    await before.store.put('attempts', CURVE_ATTEMPT);
    const { store, loaded, notices } = await openApp();
    expect(store.keeps).toBe(true);
    expect(loaded.attempts).toEqual([CURVE_ATTEMPT]);
    expect(loaded.cues).toContainEqual(MY_CUE);
    expect([...notices.keys()]).toEqual(['full']);
    vi.restoreAllMocks();
    await store.saveUnsaved();
    expect(waiting()).toBeNull();
  });

  it('is whatever the page knows, where the database is emptied under it', async () => {
    const { store, notices } = await openApp();
    await store.put('cues', MY_CUE);
    await store.put('attempts', CURVE_ATTEMPT);
    const gone = await openDB('leeway');
    gone.close();
    await new Promise((resolve, reject) => {
      const deleting = indexedDB.deleteDatabase('leeway');
      deleting.onsuccess = resolve;
      deleting.onerror = reject;
    });
    expect([...notices.values()]).toEqual([expect.stringContaining('was deleted')]);
    await store.put('attempts', LATER_ATTEMPT);
    await store.saveUnsaved();
    expect([...notices.keys()]).toEqual([]);
    const { loaded } = await openApp();
    expect(loaded.attempts).toEqual([CURVE_ATTEMPT, LATER_ATTEMPT]);
    expect(loaded.cues).toContainEqual(MY_CUE);
  });
});

it('a forced close is over as soon as something is saved', async () => {
  const { store, notices } = await openApp();
  const databases: IDBDatabase[] = [];
  const { transaction } = IDBDatabase.prototype;
  vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (
    this: IDBDatabase,
    ...given
  ) {
    databases.push(this);
    return transaction.apply(this, given);
  });
  await store.saveDesk(DEFAULT_DESK);
  vi.restoreAllMocks();
  const [open] = databases;
  forceCloseDatabase(open as unknown as Parameters<typeof forceCloseDatabase>[0]);
  await vi.waitFor(() => expect([...notices.keys()]).toEqual(['closed']));
  expect(await store.put('attempts', CURVE_ATTEMPT)).toEqual({ ok: true });
  expect(notices.size).toBe(0);
});
