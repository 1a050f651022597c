import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createStore } from '../../src/store/create-store';
import { DEFAULT_DESK } from '../../src/store/default-desk';
import { latestVersion, MIGRATIONS } from '../../src/store/migrations';
import { fetchMemory } from '../harness/fetch-memory';
import { contentsOf, importText, textOf } from './backup/import-text';
import { MY_CUE } from './backup/invented-contents';
import { CURVE_ATTEMPT } from './invented-attempts';
import { newDevice } from './new-device';

beforeEach(() => {
  newDevice();
});
afterEach(() => {
  vi.restoreAllMocks();
});

async function openStore() {
  const store = createStore({ fetchMemory });
  await store.loadAll();
  return { store };
}

describe('every write', () => {
  it('waits until the device has it', async () => {
    const modes: (readonly [string | undefined, unknown])[] = [];
    const { transaction } = IDBDatabase.prototype;
    vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (
      this: IDBDatabase,
      names,
      mode,
      options,
    ) {
      modes.push([mode, options?.durability]);
      return transaction.call(this, names, mode, options);
    });
    const { store } = await openStore();
    const [position] = (await contentsOf(store)).positions;
    if (!position) throw new Error('no example position');
    await store.put('cues', MY_CUE);
    await store.delete('cues', MY_CUE.id);
    await store.put('attempts', CURVE_ATTEMPT);
    await store.delete('attempts', CURVE_ATTEMPT.id);
    await store.put('positions', position);
    await store.delete('positions', position.id);
    await store.saveDesk(DEFAULT_DESK);
    await importText(store, await textOf(store), 'replace');
    await store.undoImport();
    const writes = modes.filter(([mode]) => mode === 'readwrite');
    expect(writes).toHaveLength(10);
    expect(writes.filter(([, durability]) => durability !== 'strict')).toEqual([]);
  });
});

describe('copies from before an update', () => {
  it('are the last three, whole, whatever else lies among them', async () => {
    const { store } = await openStore();
    await store.put('cues', MY_CUE);
    const raw = await openDB('leeway');
    for (const row of [null, 'torn', { reason: 'upgrade', rows: { cues: 'torn' } }]) {
      await raw.add('former-contents', row);
    }
    const rows = await raw.getAll('cues');
    raw.close();
    const former = await openDB('leeway', latestVersion(MIGRATIONS));
    await former.add('former-contents', {
      reason: 'upgrade',
      atMs: 5,
      rows: { cues: rows.map((value) => ({ key: value.id, value })) },
    });
    former.close();
    const [newest, ...others] = await store.formerCopies();
    expect(newest?.atMs).toBe(5);
    expect(newest?.contents.cues).toContainEqual(MY_CUE);
    expect(others).toHaveLength(1);
  });
});
