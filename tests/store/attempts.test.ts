import { beforeEach, describe, expect, it } from 'vitest';
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

  it('outlive the visit', async () => {
    const { store } = await openApp();
    await store.put('attempts', CURVE_ATTEMPT);
    expect((await openApp()).loaded.attempts).toEqual([CURVE_ATTEMPT]);
  });
});
