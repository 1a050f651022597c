import { beforeEach, describe, expect, it } from 'vitest';
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

  it('outlive the visit, and examples that were deleted stay away', async () => {
    const { store } = await openApp();
    await store.put('positions', BANK_POSITION);
    for (const { id } of EXAMPLE_POSITIONS) await store.delete('positions', id);
    expect((await openApp()).loaded.positions).toEqual([BANK_POSITION]);
  });
});
