import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createStore } from '../../src/store/create-store';
import { DEFAULT_DESK } from '../../src/store/default-desk';
import { DEMO_CATALOGUE } from '../../src/store/demo-catalogue';
import { latestVersion, MIGRATIONS } from '../../src/store/migrations';
import type { StoreNotice, StorePort } from '../../src/store/store-port';
import { fetchMemory } from '../harness/fetch-memory';
import { newDevice, newDraftStorage } from './new-device';

beforeEach(() => {
  newDevice();
});
afterEach(() => {
  vi.unstubAllGlobals();
});

function openApp(patienceMs = 4000) {
  const store = createStore({ fetchMemory, patienceMs, findDraftStorage: newDraftStorage });
  const notices: StoreNotice[] = [];
  store.onNotice((notice) => notices.push(notice));
  return { store, kinds: () => notices.map(({ kind }) => kind), notices };
}

async function expectToRunWithoutStorage(store: StorePort): Promise<void> {
  const loaded = await store.loadAll();
  expect(loaded).toMatchObject({ desk: DEFAULT_DESK, ...DEMO_CATALOGUE });
  expect(store.keeps).toBe(false);
  const [cue] = DEMO_CATALOGUE.cues;
  if (!cue) throw new Error('no demo cue');
  expect(await store.put('cues', { ...cue, massRatio: 17 })).toEqual({ ok: true });
  expect(await store.saveDesk({ ...DEFAULT_DESK, heldShot: DEFAULT_DESK.shot })).toEqual({
    ok: true,
  });
  expect(await store.delete('cues', 'demo-cue-low')).toEqual({ ok: true });
  const again = await store.loadAll();
  expect(again.cues.map(({ massRatio }) => massRatio)).toEqual([17, 22, 50]);
  expect(again.desk.heldShot).toEqual(DEFAULT_DESK.shot);
}

describe('without storage the app runs all the same, and says that nothing is kept', () => {
  it('where the browser has no IndexedDB', async () => {
    vi.stubGlobal('indexedDB', undefined);
    const { store, kinds } = openApp();
    await expectToRunWithoutStorage(store);
    expect(kinds()).toEqual(['not-kept']);
  });

  it('where opening is denied', async () => {
    vi.stubGlobal('indexedDB', {
      open: () => {
        throw new DOMException('The operation is insecure.', 'SecurityError');
      },
    });
    const { store, kinds } = openApp();
    await expectToRunWithoutStorage(store);
    expect(kinds()).toEqual(['not-kept']);
  });

  it('where the database never answers', async () => {
    vi.stubGlobal('indexedDB', { open: () => new EventTarget() });
    const { store, kinds } = openApp(30);
    await expectToRunWithoutStorage(store);
    expect(kinds()).toEqual(['not-opened']);
  });

  it('where a newer version of the app has been, whose data it leaves alone', async () => {
    const newer = await openDB('leeway', latestVersion(MIGRATIONS) + 1, {
      upgrade: (database) => void database.createObjectStore('cues', { keyPath: 'id' }),
    });
    await newer.put('cues', { id: 'from-tomorrow' });
    const { store, kinds } = openApp();
    await expectToRunWithoutStorage(store);
    expect(kinds()).toEqual(['outdated', 'not-opened']);
    expect(await newer.getAllKeys('cues')).toEqual(['from-tomorrow']);
    newer.close();
  });

  it('and still refuses to empty a shelf', async () => {
    vi.stubGlobal('indexedDB', undefined);
    const { store } = openApp();
    await store.loadAll();
    const [last, ...others] = DEMO_CATALOGUE.balls;
    for (const { id } of others) await store.delete('balls', id);
    expect(await store.delete('balls', last?.id ?? '')).toMatchObject({
      ok: false,
      reason: 'last-on-shelf',
    });
  });
});

describe('a write that fails', () => {
  it('is told of with its reason when there is no room', async () => {
    const { store, kinds } = openApp();
    await store.loadAll();
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementationOnce(() => {
      throw new DOMException('no room', 'QuotaExceededError');
    });
    expect(await store.saveDesk(DEFAULT_DESK)).toMatchObject({ ok: false, reason: 'full' });
    expect(kinds()).toEqual(['full']);
    expect(await store.saveDesk(DEFAULT_DESK)).toEqual({ ok: true });
  });

  it('is told of as outdated once a newer tab has the database', async () => {
    const { store, kinds } = openApp();
    await store.loadAll();
    const newer = await openDB('leeway', latestVersion(MIGRATIONS) + 1);
    expect(await store.saveDesk(DEFAULT_DESK)).toMatchObject({ ok: false, reason: 'outdated' });
    expect(new Set(kinds())).toEqual(new Set(['outdated']));
    newer.close();
  });
});

describe('notices', () => {
  it('reach a listener that comes later', async () => {
    vi.stubGlobal('indexedDB', undefined);
    const { store } = openApp();
    await store.loadAll();
    const late: StoreNotice[] = [];
    store.onNotice((notice) => late.push(notice));
    expect(late).toEqual([{ kind: 'not-kept', unsaved: [] }]);
  });

  it('stop when asked', async () => {
    vi.stubGlobal('indexedDB', undefined);
    const { store } = openApp();
    const heard: StoreNotice[] = [];
    const stop = store.onNotice((notice) => heard.push(notice));
    stop();
    await store.loadAll();
    expect(heard).toEqual([]);
  });
});
