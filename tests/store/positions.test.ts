import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { EXAMPLE_POSITIONS } from '../../src/store/example-positions';
import { onEitherStorage, openApp } from './either-storage';
import { BANK_POSITION, LATER_POSITION } from './invented-positions';
import { newDevice } from './new-device';

onEitherStorage('positions', (keeps) => {
  it('are the invented examples on a first visit, in their own order', async () => {
    const { store, loaded } = await openApp();
    expect(loaded.positions).toEqual(EXAMPLE_POSITIONS);
    expect(store.keeps).toBe(keeps);
  });

  it('come back the one changed last first', async () => {
    const { store } = await openApp();
    for (const position of [BANK_POSITION, LATER_POSITION]) {
      expect(await store.put('positions', position)).toEqual({ ok: true });
    }
    const { positions } = await store.loadAll();
    expect(positions.slice(0, 2)).toEqual([LATER_POSITION, BANK_POSITION]);
    expect(positions.slice(2)).toEqual(EXAMPLE_POSITIONS);
  });

  it('are there once, as they were last put', async () => {
    const { store } = await openApp();
    await store.put('positions', BANK_POSITION);
    const moved = { ...BANK_POSITION, balls: [{ name: 'cue' as const, xM: 0, yM: 0 }] };
    await store.put('positions', moved);
    expect((await store.loadAll()).positions).toEqual([moved, ...EXAMPLE_POSITIONS]);
  });

  it('can be deleted, the last of them too, and twice', async () => {
    const { store } = await openApp();
    for (const { id } of [...EXAMPLE_POSITIONS, ...EXAMPLE_POSITIONS]) {
      expect(await store.delete('positions', id)).toEqual({ ok: true });
    }
    expect((await store.loadAll()).positions).toEqual([]);
  });
});

describe('positions on the device', () => {
  beforeEach(() => {
    newDevice();
  });
  afterEach(() => {
    vi.restoreAllMocks();
  });

  it('outlive the visit, and examples that were deleted stay away', async () => {
    const { store } = await openApp();
    await store.put('positions', BANK_POSITION);
    for (const { id } of EXAMPLE_POSITIONS) await store.delete('positions', id);
    expect((await openApp()).loaded.positions).toEqual([BANK_POSITION]);
  });

  it('are mended where they can be, told of once, and kept as they were', async () => {
    await openApp();
    const raw = await openDB('leeway');
    const bad = { ...BANK_POSITION, zone: { xM: 0, yM: 0, radiusM: -1 } };
    await raw.put('positions', bad);
    const { loaded } = await openApp();
    const mended = { ...BANK_POSITION, zone: null };
    expect(loaded.positions[0]).toEqual(mended);
    expect(loaded.repairs).toEqual([
      { store: 'positions', id: bad.id, field: 'zone', was: bad.zone, now: null },
    ]);
    expect(await raw.get('positions', bad.id)).toEqual(mended);
    expect(await raw.getAll('set-aside')).toEqual([
      { store: 'positions', raw: bad, reason: 'repaired' },
    ]);
    expect((await openApp()).loaded.repairs).toEqual([]);
    raw.close();
  });

  it('are set aside where no ball can be made out, and not lost', async () => {
    await openApp();
    const raw = await openDB('leeway');
    const ruin = { ...BANK_POSITION, balls: 'three' };
    await raw.put('positions', ruin);
    const { loaded } = await openApp();
    expect(loaded.positions).toEqual(EXAMPLE_POSITIONS);
    expect(loaded.quarantined).toEqual([{ store: 'positions', raw: ruin, reason: 'unreadable' }]);
    expect(await raw.getAll('set-aside')).toEqual(loaded.quarantined);
    raw.close();
  });

  it('are told of when they cannot be saved, and are saved by the next load', async () => {
    const { store } = await openApp();
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementationOnce(() => {
      throw new DOMException('no room', 'QuotaExceededError');
    });
    expect(await store.put('positions', BANK_POSITION)).toMatchObject({
      ok: false,
      reason: 'full',
    });
    expect((await store.loadAll()).positions).toContainEqual(BANK_POSITION);
  });
});
