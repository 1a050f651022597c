import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { DEFAULT_DESK } from '../../src/store/default-desk';
import type { DraftStorage } from '../../src/store/noted-text';
import { contentsOf, importText, textOf } from './backup/import-text';
import { MY_CUE } from './backup/invented-contents';
import { CURVE_ATTEMPT } from './invented-attempts';
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

const waiting = () => draftStorage.getItem('leeway.unsaved');

describe('notes of other contents', () => {
  it('of a visit without the database only add to what is there', async () => {
    const before = await openApp();
    await before.store.put('cues', MY_CUE);
    const { open } = globalThis.indexedDB;
    globalThis.indexedDB.open = () => new EventTarget() as IDBOpenDBRequest;
    const shut = await openApp(undefined, 200);
    expect([...shut.notices.keys()]).toEqual(['not-opened']);
    const guess = { ...MY_CUE, massRatio: 50 };
    await shut.store.put('cues', guess);
    await shut.store.put('attempts', CURVE_ATTEMPT);
    globalThis.indexedDB.open = open;
    const { store, loaded } = await openApp();
    expect(loaded.attempts).toEqual([CURVE_ATTEMPT]);
    expect(loaded.cues).toContainEqual(MY_CUE);
    const { setAside } = await contentsOf(store);
    expect(setAside).toEqual([{ store: 'cues', raw: guess, reason: 'noted' }]);
    expect(waiting()).toBeNull();
  });

  it.each([
    'null',
    '7',
    '[null, 3, {"store": "cues"}]',
    '[{"store": "__proto__", "id": "a", "era": "", "row": {"id": "a"}}]',
    '[{"store": "cues", "id": "a", "era": "", "row": {"id": "b"}}]',
    '[{"store": "desk", "id": "current", "era": ""}]',
    '{"store": "cues"',
  ])('that are no notes are passed over: %s', async (text) => {
    draftStorage.setItem('leeway.unsaved', text);
    const { loaded, store } = await openApp();
    expect(store.keeps).toBe(true);
    expect([...loaded.repairs, ...loaded.quarantined]).toEqual([]);
  });
});

describe('a tab that shows what was there before an import in another', () => {
  it('saves nothing over it, says so, and gives its own new readings to the next load', async () => {
    const stale = await openApp();
    const other = await openApp();
    await other.store.put('cues', MY_CUE);
    const text = await textOf(other.store);
    await importText(other.store, text, 'replace');
    const old = { ...MY_CUE, massRatio: 9 };
    expect(await stale.store.put('cues', old)).toMatchObject({ reason: 'replaced' });
    expect(await stale.store.delete('cues', MY_CUE.id)).toMatchObject({ ok: false });
    const desk = { ...DEFAULT_DESK, playerId: 'player-student' };
    expect(await stale.store.saveDesk(desk)).toMatchObject({ reason: 'replaced' });
    stale.store.draftDesk(desk);
    await stale.store.put('attempts', CURVE_ATTEMPT);
    expect(stale.notices.get('replaced')).toContain('reload');
    const { loaded } = await openApp();
    expect(loaded.cues).toContainEqual(MY_CUE);
    expect(loaded.desk).toEqual(DEFAULT_DESK);
    expect(loaded.attempts).toEqual([CURVE_ATTEMPT]);
  });

  it('saves again once it has loaded anew', async () => {
    const stale = await openApp();
    const other = await openApp();
    await importText(other.store, await textOf(other.store), 'replace');
    await stale.store.loadAll();
    expect(await stale.store.put('cues', MY_CUE)).toEqual({ ok: true });
  });

  it('is told the same after an undoing', async () => {
    const other = await openApp();
    await importText(other.store, await textOf(other.store), 'replace');
    const stale = await openApp();
    await other.store.undoImport();
    expect(await stale.store.saveDesk(DEFAULT_DESK)).toMatchObject({ reason: 'replaced' });
  });
});
