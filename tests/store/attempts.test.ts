import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { onEitherStorage, openApp } from './either-storage';
import { CURVE_ATTEMPT, LATER_ATTEMPT } from './invented-attempts';
import { newDevice } from './new-device';

onEitherStorage('attempts', (keeps) => {
  it('are none on a first visit', async () => {
    const { store, loaded } = await openApp();
    expect(loaded.attempts).toEqual([]);
    expect(store.keeps).toBe(keeps);
  });

  it('come back the oldest first, and those begun at once by id', async () => {
    const { store } = await openApp();
    const twin = { ...LATER_ATTEMPT, id: 'attempt-a' };
    for (const attempt of [LATER_ATTEMPT, CURVE_ATTEMPT, twin]) {
      expect(await store.put('attempts', attempt)).toEqual({ ok: true });
    }
    expect((await store.loadAll()).attempts).toEqual([CURVE_ATTEMPT, twin, LATER_ATTEMPT]);
  });

  it('are there once, as they were last put', async () => {
    const { store } = await openApp();
    await store.put('attempts', LATER_ATTEMPT);
    const read = { ...LATER_ATTEMPT, readings: { timeS: 1.1 }, stepsDone: ['timeS'] };
    await store.put('attempts', read);
    expect((await store.loadAll()).attempts).toEqual([read]);
  });

  it('can be deleted, the last of them too, and twice', async () => {
    const { store } = await openApp();
    await store.put('attempts', CURVE_ATTEMPT);
    expect(await store.delete('attempts', CURVE_ATTEMPT.id)).toEqual({ ok: true });
    expect(await store.delete('attempts', CURVE_ATTEMPT.id)).toEqual({ ok: true });
    expect((await store.loadAll()).attempts).toEqual([]);
  });
});

describe('attempts on the device', () => {
  beforeEach(() => {
    newDevice();
  });
  afterEach(() => {
    vi.restoreAllMocks();
  });

  it('outlive the visit', async () => {
    const { store } = await openApp();
    await store.put('attempts', CURVE_ATTEMPT);
    expect((await openApp()).loaded.attempts).toEqual([CURVE_ATTEMPT]);
  });

  it('are mended where they can be, told of once, and kept as they were', async () => {
    await openApp();
    const raw = await openDB('leeway');
    const bad = { ...CURVE_ATTEMPT, readings: { timeS: -3, landingM: -0.031 } };
    await raw.put('attempts', bad);
    const { loaded } = await openApp();
    const mended = { ...CURVE_ATTEMPT, readings: { landingM: -0.031 } };
    expect(loaded.attempts).toEqual([mended]);
    expect(loaded.repairs).toEqual([
      { store: 'attempts', id: bad.id, field: 'readings.timeS', was: -3, now: undefined },
    ]);
    expect(await raw.getAll('attempts')).toEqual([mended]);
    expect(await raw.getAll('set-aside')).toEqual([
      { store: 'attempts', raw: bad, reason: 'repaired' },
    ]);
    expect((await openApp()).loaded.repairs).toEqual([]);
    raw.close();
  });

  it('are set aside where they tell nothing, and not lost', async () => {
    await openApp();
    const raw = await openDB('leeway');
    const ruin = { ...CURVE_ATTEMPT, shot: 'long' };
    await raw.put('attempts', ruin);
    await raw.put('attempts', LATER_ATTEMPT);
    const { loaded } = await openApp();
    expect(loaded.attempts).toEqual([LATER_ATTEMPT]);
    expect(loaded.quarantined).toEqual([{ store: 'attempts', raw: ruin, reason: 'unreadable' }]);
    expect(await raw.getAll('attempts')).toEqual([LATER_ATTEMPT]);
    expect(await raw.getAll('set-aside')).toEqual(loaded.quarantined);
    expect((await openApp()).loaded.quarantined).toEqual([]);
    raw.close();
  });

  it('are told of when they cannot be saved, and are saved by the next load', async () => {
    const { store } = await openApp();
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementationOnce(() => {
      throw new DOMException('no room', 'QuotaExceededError');
    });
    expect(await store.put('attempts', CURVE_ATTEMPT)).toMatchObject({ ok: false, reason: 'full' });
    expect((await store.loadAll()).attempts).toEqual([CURVE_ATTEMPT]);
  });
});
