import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { EXAMPLE_POSITIONS } from '../../src/store/example-positions';
import type { StorePort } from '../../src/store/store-port';
import { openApp } from './either-storage';
import { CURVE_ATTEMPT, LATER_ATTEMPT } from './invented-attempts';
import { BANK_POSITION, LATER_POSITION } from './invented-positions';
import { newDevice } from './new-device';

beforeEach(() => {
  newDevice();
});
afterEach(() => {
  vi.restoreAllMocks();
});

const ATTEMPTS = {
  store: 'attempts',
  row: CURVE_ATTEMPT,
  later: LATER_ATTEMPT,
  /** What is there from the outset. */
  others: [],
  putRow: (store: StorePort) => store.put('attempts', CURVE_ATTEMPT),
  bad: { ...CURVE_ATTEMPT, readings: { timeS: -3, landingM: -0.031 } },
  mended: { ...CURVE_ATTEMPT, readings: { landingM: -0.031 } },
  repair: { field: 'readings.timeS', was: -3, now: undefined },
  /** A row that tells nothing: of no trial, or without a ball that can be made out. */
  ruin: { ...CURVE_ATTEMPT, shot: 'long' },
} as const;

const POSITIONS = {
  store: 'positions',
  row: BANK_POSITION,
  later: LATER_POSITION,
  others: EXAMPLE_POSITIONS,
  putRow: (store: StorePort) => store.put('positions', BANK_POSITION),
  bad: { ...BANK_POSITION, zone: { xM: 0, yM: 0, radiusM: -1 } },
  mended: { ...BANK_POSITION, zone: null },
  repair: { field: 'zone', was: { xM: 0, yM: 0, radiusM: -1 }, now: null },
  ruin: { ...BANK_POSITION, balls: 'three' },
} as const;

describe.each([ATTEMPTS, POSITIONS])('$store on the device', (kind) => {
  const { store, row, later, others, putRow, bad, mended, repair, ruin } = kind;

  it('are mended where they can be, told of once, and kept as they were', async () => {
    await openApp();
    const raw = await openDB('leeway');
    await raw.put(store, bad);
    const { loaded } = await openApp();
    expect(loaded[store]).toEqual([mended, ...others]);
    expect(loaded.repairs).toEqual([{ store, id: bad.id, ...repair }]);
    expect(await raw.get(store, bad.id)).toEqual(mended);
    expect(await raw.getAll('set-aside')).toEqual([{ store, raw: bad, reason: 'repaired' }]);
    expect((await openApp()).loaded.repairs).toEqual([]);
    raw.close();
  });

  it('are set aside where they tell nothing, and not lost', async () => {
    await openApp();
    const raw = await openDB('leeway');
    await raw.put(store, ruin);
    await raw.put(store, later);
    const { loaded } = await openApp();
    expect(loaded[store]).toEqual([later, ...others]);
    expect(loaded.quarantined).toEqual([{ store, raw: ruin, reason: 'unreadable' }]);
    const kept = new Set([later, ...others].map(({ id }) => id));
    expect(new Set(await raw.getAllKeys(store))).toEqual(kept);
    expect(await raw.getAll('set-aside')).toEqual(loaded.quarantined);
    expect((await openApp()).loaded.quarantined).toEqual([]);
    raw.close();
  });

  it('are told of when they cannot be saved, and are saved by the next load', async () => {
    const { store: port } = await openApp();
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementationOnce(() => {
      throw new DOMException('no room', 'QuotaExceededError');
    });
    expect(await putRow(port)).toMatchObject({ ok: false, reason: 'full' });
    expect((await port.loadAll())[store]).toEqual([row, ...others]);
  });
});
