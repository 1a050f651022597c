import { afterEach, describe, expect, it, vi } from 'vitest';
import { HOUSE, twoTabs } from './open-tabs';

afterEach(() => {
  vi.restoreAllMocks();
});

describe('a cue deleted in one tab', () => {
  it('stays deleted where the other did nothing to it', async () => {
    const { one, other, house, kept, settle } = await twoTabs();
    await one.screen.remove(HOUSE);
    const [another] = other.screen.ids('cues').filter((id) => id !== HOUSE);
    const cue = other.screen.cue(another ?? '');
    if (cue) await other.screen.edit(cue, { massRatio: 29 });
    await settle();
    expect(await kept()).toBeUndefined();
    expect(other.screen.cue(house.id)).toBeNull();
  });

  it.each(['before it has heard', 'after it has heard'])(
    'and changed in the other %s comes back with the change, if it is wanted',
    async (when) => {
      const { one, other, house, kept, settle } = await twoTabs();
      await one.screen.remove(HOUSE);
      if (when === 'after it has heard') await settle();
      await other.screen.edit(house, { massRatio: 29 });
      expect(await kept()).toBeUndefined();
      expect(other.clashes).toMatchObject([{ kind: 'gone', id: HOUSE, name: house.name }]);
      await other.screen.edit(house, { massRatio: 30 });
      expect(other.clashes).toHaveLength(1);
      other.store.answerElsewhere('cues', HOUSE, true);
      await settle();
      expect(await kept()).toMatchObject({ massRatio: 30 });
      expect(one.screen.cue(HOUSE)).toEqual(await kept());
      expect(other.clashes.at(-1)).toMatchObject({ kind: 'answered' });
    },
  );

  it('and changed in the other goes there too, if it is not wanted', async () => {
    const { one, other, house, kept, settle, draftStorage } = await twoTabs();
    await one.screen.remove(HOUSE);
    await other.screen.edit(house, { massRatio: 29 });
    expect(draftStorage.getItem('leeway.unsaved')).toContain(HOUSE);
    other.store.answerElsewhere('cues', HOUSE, false);
    await settle();
    expect(await kept()).toBeUndefined();
    expect(other.screen.cue(HOUSE)).toBeNull();
    expect(draftStorage.getItem('leeway.unsaved')).toBeNull();
    await other.store.saveUnsaved();
    expect(await kept()).toBeUndefined();
  });

  it('and changed in the other is set aside, where the tab that asks is closed', async () => {
    const { one, other, house, kept, openTab } = await twoTabs();
    await one.screen.remove(HOUSE);
    await other.screen.edit(house, { massRatio: 29 });
    const next = await openTab();
    expect(await kept()).toBeUndefined();
    const read = await next.store.readAll();
    if (!read.ok) throw new Error(read.reason);
    expect(read.contents.setAside).toContainEqual({
      store: 'cues',
      raw: { ...house, massRatio: 29 },
      reason: 'noted',
    });
  });

  it('that the other had changed unheard stays, with the change, and says so', async () => {
    const { one, other, house, kept } = await twoTabs();
    await other.screen.edit(house, { massRatio: 29 });
    await one.screen.remove(HOUSE);
    expect(await kept()).toMatchObject({ massRatio: 29 });
    expect(one.screen.cue(HOUSE)).toMatchObject({ massRatio: 29 });
    expect(one.clashes).toMatchObject([{ kind: 'stays', id: HOUSE }]);
    await one.screen.remove(HOUSE);
    expect(await kept()).toBeUndefined();
  });

  it('can be put back by the tab that deleted it', async () => {
    const { one, other, house, kept, settle } = await twoTabs();
    await one.screen.remove(HOUSE);
    await settle();
    await one.screen.edit(house, {});
    await settle();
    expect(await kept()).toEqual(house);
    expect(other.screen.cue(HOUSE)).toEqual(house);
    expect(one.clashes).toEqual([]);
  });
});
