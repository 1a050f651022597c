import { beforeEach, describe, expect, it } from 'vitest';
import { DEFAULT_DESK } from '../../src/store/default-desk';
import { DEMO_CATALOGUE } from '../../src/store/demo-catalogue';
import { EXAMPLE_POSITIONS } from '../../src/store/example-positions';
import type { DraftStorage } from '../../src/store/noted-text';
import { firstPlayer } from '../../src/store/parse-player';
import { type Desk, SHELF_NAMES } from '../../src/store/records';
import { newDevice } from './new-device';
import { NO_ROWS } from './no-rows';
import { MINE, openStore, rawDatabase } from './open-visit';

let draftStorage: DraftStorage;
beforeEach(() => {
  draftStorage = newDevice();
});

const openApp = () => openStore(draftStorage);

const deskWithSpeed = (speedMps: number): Desk => ({
  ...DEFAULT_DESK,
  shot: { ...DEFAULT_DESK.shot, speedMps },
});

describe('the store on a first visit', () => {
  it('opens with the demo catalogue and the worked example, and says nothing', async () => {
    const { store, notices } = openApp();
    const loaded = await store.loadAll();
    expect(loaded).toEqual({
      ...NO_ROWS,
      desk: DEFAULT_DESK,
      ...DEMO_CATALOGUE,
      positions: EXAMPLE_POSITIONS,
      players: [{ ...firstPlayer(), id: expect.any(String) }],
      repairs: [],
      quarantined: [],
    });
    expect(store.keeps).toBe(true);
    expect(notices).toEqual([]);
  });

  it('writes the demo catalogue and the desk down', async () => {
    await openApp().store.loadAll();
    const raw = await rawDatabase();
    for (const shelf of SHELF_NAMES) {
      const ids = DEMO_CATALOGUE[shelf].map(({ id }) => id);
      expect(await raw.getAllKeys(shelf)).toEqual([...ids].sort());
    }
    expect(await raw.get('desk', 'current')).toEqual(DEFAULT_DESK);
    expect(await raw.count('set-aside')).toBe(0);
  });
});

describe('the store on later visits', () => {
  it('has what was put, after the demo catalogue', async () => {
    const first = openApp().store;
    await first.loadAll();
    expect(await first.put('cues', MINE)).toEqual({ ok: true });
    const { cues } = await openApp().store.loadAll();
    expect(cues).toEqual([...DEMO_CATALOGUE.cues, MINE]);
  });

  it('has a changed record once, changed', async () => {
    const first = openApp().store;
    await first.loadAll();
    await first.put('cues', MINE);
    await first.put('cues', { ...MINE, massRatio: 31 });
    const { cues } = await openApp().store.loadAll();
    expect(cues.filter(({ id }) => id === 'mine')).toEqual([{ ...MINE, massRatio: 31 }]);
  });

  it('does not bring a deleted demo record back', async () => {
    const first = openApp().store;
    await first.loadAll();
    expect(await first.delete('cues', 'demo-cue-stiff')).toEqual({ ok: true });
    const { cues } = await openApp().store.loadAll();
    expect(cues.map(({ id }) => id)).not.toContain('demo-cue-stiff');
    expect(cues).toHaveLength(DEMO_CATALOGUE.cues.length - 1);
  });

  it('has the desk as it was saved', async () => {
    const first = openApp().store;
    await first.loadAll();
    const desk = { ...deskWithSpeed(2.5), heldShot: DEFAULT_DESK.shot };
    expect(await first.saveDesk(desk)).toEqual({ ok: true });
    expect((await openApp().store.loadAll()).desk).toEqual(desk);
  });

  it('keeps fields that a newer version wrote', async () => {
    const first = openApp().store;
    await first.loadAll();
    const newer = { ...MINE, ferrule: 'short' };
    await first.put('cues', newer);
    const second = openApp().store;
    const loaded = (await second.loadAll()).cues.find(({ id }) => id === 'mine');
    if (!loaded) throw new Error('the cue is gone');
    await second.put('cues', { ...loaded, massRatio: 30 });
    const raw = await rawDatabase();
    expect(await raw.get('cues', 'mine')).toEqual({ ...newer, massRatio: 30 });
  });
});

describe('deleting', () => {
  it('refuses the last record of a shelf, also when another tab took the others', async () => {
    const { store } = openApp();
    await store.loadAll();
    const [last, ...others] = DEMO_CATALOGUE.cloths;
    if (!last) throw new Error('no demo cloth');
    const otherTab = openApp().store;
    for (const { id } of others) await otherTab.delete('cloths', id);
    expect(await store.delete('cloths', last.id)).toMatchObject({
      ok: false,
      reason: 'last-on-shelf',
    });
    expect((await openApp().store.loadAll()).cloths).toEqual([last]);
  });

  it('is content when the record is gone already', async () => {
    const { store } = openApp();
    await store.loadAll();
    expect(await store.delete('cues', 'never-was')).toEqual({ ok: true });
  });
});

describe('a desk noted as the page went away', () => {
  it('is what the next visit opens with, though it was never saved', async () => {
    const first = openApp().store;
    await first.loadAll();
    first.draftDesk(deskWithSpeed(3.3));
    expect((await openApp().store.loadAll()).desk.shot.speedMps).toBe(3.3);
    const raw = await rawDatabase();
    expect(await raw.get('desk', 'current')).toEqual(deskWithSpeed(3.3));
  });

  it('gives way to a later save', async () => {
    const first = openApp().store;
    await first.loadAll();
    first.draftDesk(deskWithSpeed(3.3));
    await first.saveDesk(deskWithSpeed(4));
    expect((await openApp().store.loadAll()).desk.shot.speedMps).toBe(4);
  });

  it('outlives a save that had begun before it', async () => {
    const first = openApp().store;
    await first.loadAll();
    const earlier = first.saveDesk(deskWithSpeed(1));
    first.draftDesk(deskWithSpeed(3.3));
    await earlier;
    expect((await openApp().store.loadAll()).desk.shot.speedMps).toBe(3.3);
  });

  it('is used once', async () => {
    const first = openApp().store;
    await first.loadAll();
    first.draftDesk(deskWithSpeed(3.3));
    const second = openApp().store;
    await second.loadAll();
    expect(draftStorage.getItem('leeway.unsaved')).toBeNull();
  });

  it('is passed over when it is garbled', async () => {
    const first = openApp().store;
    await first.loadAll();
    await first.saveDesk(deskWithSpeed(2.5));
    for (const garbage of ['{"shot":', '17', 'null', '[]']) {
      draftStorage.setItem('leeway.unsaved', garbage);
      const { desk, quarantined } = await openApp().store.loadAll();
      expect(desk.shot.speedMps).toBe(2.5);
      expect(quarantined).toEqual([]);
    }
  });
});
