import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createStore } from '../../../src/store/create-store';
import { DEFAULT_DESK } from '../../../src/store/default-desk';
import { DEMO_CATALOGUE } from '../../../src/store/demo-catalogue';
import { fetchMemory } from '../../harness/fetch-memory';
import { CURVE_ATTEMPT, LATER_ATTEMPT } from '../invented-attempts';
import { NEWCOMER } from '../invented-players';
import { BANK_POSITION, LATER_POSITION } from '../invented-positions';
import { newDevice, newDraftStorage } from '../new-device';
import { NO_ROWS } from '../no-rows';
import { contentsOf, fill, importText, textOf } from './import-text';
import { CONTENTS, MY_CUE } from './invented-contents';

beforeEach(() => {
  newDevice();
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

async function openApp() {
  const store = createStore({ fetchMemory, findDraftStorage: newDraftStorage });
  await store.loadAll();
  return store;
}

/** The backup of a device that holds {@link CONTENTS}. */
async function backupText(): Promise<string> {
  const store = await openApp();
  await fill(store, CONTENTS);
  return await textOf(store);
}

describe.each([
  ['on the device', true],
  ['without storage', false],
])('a backup %s', (_, keeps) => {
  beforeEach(() => {
    if (!keeps) vi.stubGlobal('indexedDB', undefined);
  });

  it('brings everything to a device with nothing on it, and is written the same there', async () => {
    const text = await backupText();
    newDevice();
    if (!keeps) vi.stubGlobal('indexedDB', undefined);
    const store = await openApp();
    expect(store.keeps).toBe(keeps);
    expect(await importText(store, text, 'replace')).toEqual({ ok: true });
    expect(await contentsOf(store)).toEqual(CONTENTS);
    expect(await textOf(store)).toBe(text);
    const { repairs, quarantined, ...loaded } = await store.loadAll();
    expect([...repairs, ...quarantined]).toEqual([]);
    expect({ ...loaded, setAside: CONTENTS.setAside }).toEqual(CONTENTS);
  });

  it('leaves nothing else where it replaces', async () => {
    const text = await backupText();
    const store = await openApp();
    await store.put('cues', { ...MY_CUE, id: 'another' });
    await store.put('attempts', { ...CURVE_ATTEMPT, id: 'another' });
    await store.put('positions', { ...BANK_POSITION, id: 'another' });
    await store.delete('cues', 'demo-cue-stiff');
    await importText(store, text, 'replace');
    expect(await textOf(store)).toBe(text);
  });

  it('adds to what is there where it merges, and leaves the desk', async () => {
    const text = await backupText();
    const store = await openApp();
    const desk = { ...DEFAULT_DESK, playerId: 'player-newcomer' };
    const mine = { ...MY_CUE, id: 'later', name: 'Later cue' };
    const other = { ...BANK_POSITION, id: 'other', changedAtMs: 7 };
    const setAside = [{ store: 'balls' as const, raw: 1, reason: 'not-a-record' as const }];
    await fill(store, {
      ...NO_ROWS,
      desk,
      ...DEMO_CATALOGUE,
      cues: [mine, { ...MY_CUE, massRatio: 9 }],
      attempts: [LATER_ATTEMPT],
      positions: [other, { ...LATER_POSITION, name: 'Before', changedAtMs: 5 }],
      setAside,
    });
    expect(await importText(store, text, 'merge')).toEqual({ ok: true });
    const merged = {
      ...CONTENTS,
      desk,
      ...DEMO_CATALOGUE,
      cues: [...DEMO_CATALOGUE.cues, mine, MY_CUE],
      attempts: [CURVE_ATTEMPT, LATER_ATTEMPT],
      positions: [LATER_POSITION, BANK_POSITION, other],
      setAside: [...setAside, ...CONTENTS.setAside],
    };
    expect(await contentsOf(store)).toEqual(merged);
    await importText(store, text, 'merge');
    expect(await contentsOf(store)).toEqual(merged);
  });

  it('can be undone, and the undoing too', async () => {
    const text = await backupText();
    const store = await openApp();
    const before = {
      ...CONTENTS,
      ...NO_ROWS,
      ...DEMO_CATALOGUE,
      players: [NEWCOMER],
      desk: DEFAULT_DESK,
    };
    await fill(store, before);
    const textBefore = await textOf(store);
    await importText(store, text, 'replace');
    await store.loadAll();
    await store.put('attempts', { ...CURVE_ATTEMPT, id: 'since' });
    await store.put('positions', { ...BANK_POSITION, id: 'since' });
    const textSince = await textOf(store);
    expect(await store.undoImport()).toEqual({ ok: true });
    expect(await contentsOf(store)).toEqual(before);
    expect(await textOf(store)).toBe(textBefore);
    expect(await store.undoImport()).toEqual({ ok: true });
    expect(await textOf(store)).toBe(textSince);
  });

  it('is remembered by its time while it can be undone', async () => {
    const text = await backupText();
    newDevice();
    if (!keeps) vi.stubGlobal('indexedDB', undefined);
    const store = await openApp();
    expect(await store.lastImportMs()).toBeNull();
    expect(await store.undoImport()).toMatchObject({ ok: false, reason: 'nothing-kept' });
    vi.useFakeTimers({ now: 1_800_000_111_000, toFake: ['Date'] });
    await importText(store, text, 'merge');
    vi.setSystemTime(1_800_000_222_000);
    expect(await store.lastImportMs()).toBe(1_800_000_111_000);
  });
});
