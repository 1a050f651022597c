import { beforeEach, describe, expect, it } from 'vitest';
import { DEFAULT_DESK } from '../../src/store/default-desk';
import { DEMO_CATALOGUE } from '../../src/store/demo-catalogue';
import type { DraftStorage } from '../../src/store/noted-text';
import { newDevice } from './new-device';
import { MINE, openStore, rawDatabase } from './open-visit';

let draftStorage: DraftStorage;
beforeEach(() => {
  draftStorage = newDevice();
});

const openApp = () => openStore(draftStorage);

describe('rows gone bad', () => {
  it('are mended, told of once, and kept as they were', async () => {
    await openApp().store.loadAll();
    const bad = { ...MINE, massRatio: -4, tipDiameterM: Number.NaN, chalk: 'green' };
    const raw = await rawDatabase();
    await raw.put('cues', bad);
    const { cues, repairs, quarantined } = await openApp().store.loadAll();
    const mended = { ...bad, massRatio: 2, tipDiameterM: 0.013 };
    expect(cues.find(({ id }) => id === 'mine')).toEqual(mended);
    expect(repairs).toEqual([
      { store: 'cues', id: 'mine', field: 'massRatio', was: -4, now: 2 },
      { store: 'cues', id: 'mine', field: 'tipDiameterM', was: Number.NaN, now: 0.013 },
    ]);
    expect(quarantined).toEqual([]);
    expect(await raw.get('cues', 'mine')).toEqual(mended);
    expect(await raw.getAll('set-aside')).toEqual([
      { store: 'cues', raw: bad, reason: 'repaired' },
    ]);
    expect((await openApp().store.loadAll()).repairs).toEqual([]);
  });

  it('are set aside when beyond repair, and not lost', async () => {
    await openApp().store.loadAll();
    const raw = await rawDatabase();
    const ruins = [
      { id: 7, massRatio: 20 },
      { id: 'empty', name: 'Empty' },
    ];
    for (const ruin of ruins) await raw.put('cues', ruin);
    const { cues, quarantined } = await openApp().store.loadAll();
    expect(cues).toEqual(DEMO_CATALOGUE.cues);
    expect(quarantined).toEqual([
      { store: 'cues', raw: ruins[0], reason: 'no-id' },
      { store: 'cues', raw: ruins[1], reason: 'nothing-readable' },
    ]);
    expect(await raw.getAll('set-aside')).toEqual(quarantined);
    expect(await raw.getAllKeys('cues')).toEqual(DEMO_CATALOGUE.cues.map(({ id }) => id).sort());
    expect((await openApp().store.loadAll()).quarantined).toEqual([]);
  });

  it('bring the demo catalogue back when a shelf has nothing else left', async () => {
    await openApp().store.loadAll();
    const raw = await rawDatabase();
    await raw.clear('tables');
    await raw.put('tables', { id: 'ruin' });
    const { tables, quarantined } = await openApp().store.loadAll();
    expect(tables).toEqual(DEMO_CATALOGUE.tables);
    expect(quarantined).toHaveLength(1);
  });

  it('give a default desk for one that is no desk, which is set aside', async () => {
    await openApp().store.loadAll();
    const raw = await rawDatabase();
    await raw.put('desk', 'scribble', 'current');
    const { desk, quarantined } = await openApp().store.loadAll();
    expect(desk).toEqual(DEFAULT_DESK);
    expect(quarantined).toEqual([{ store: 'desk', raw: 'scribble', reason: 'not-a-record' }]);
    expect(await raw.getAll('set-aside')).toEqual(quarantined);
    expect(await raw.get('desk', 'current')).toEqual(DEFAULT_DESK);
  });

  it('choose another cue when the one in play was beyond repair', async () => {
    await openApp().store.loadAll();
    const raw = await rawDatabase();
    await raw.put('cues', { id: 'demo-cue-house' });
    const { desk, repairs } = await openApp().store.loadAll();
    expect(desk.choice.cues).toBe('demo-cue-stiff');
    expect(repairs).toEqual([
      {
        store: 'desk',
        id: 'desk',
        field: 'choice.cues',
        was: 'demo-cue-house',
        now: 'demo-cue-stiff',
      },
    ]);
  });
});
