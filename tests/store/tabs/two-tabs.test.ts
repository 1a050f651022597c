import { afterEach, describe, expect, it, vi } from 'vitest';
import { DEFAULT_DESK } from '../../../src/store/default-desk';
import { MY_CUE } from '../backup/invented-contents';
import { CURVE_ATTEMPT } from '../invented-attempts';
import { LAID_SHOT, PLAIN_SHOT, STUDENT } from '../invented-players';
import { HOUSE, twoTabs } from './open-tabs';

afterEach(() => {
  vi.restoreAllMocks();
});

describe('two tabs that change a cue', () => {
  it('keep the fields of both, though neither has heard of the other', async () => {
    const { one, other, house, kept, settle } = await twoTabs();
    await one.screen.edit(house, { massRatio: 31 });
    await other.screen.edit(house, { tipRadiusM: 0.008 });
    expect(await kept()).toMatchObject({ massRatio: 31, tipRadiusM: 0.008 });
    await settle();
    for (const tab of [one, other]) {
      expect(tab.screen.cue(HOUSE)).toEqual(await kept());
      expect(tab.clashes).toEqual([]);
    }
  });

  it('hear of each other at once, and show the same', async () => {
    const { one, other, house, settle } = await twoTabs();
    await one.screen.edit(house, { massRatio: 31 });
    await settle();
    expect(other.screen.cue(HOUSE)?.massRatio).toBe(31);
    await one.screen.edit(MY_CUE, {});
    await one.screen.remove('demo-cue-stiff');
    await settle();
    expect(other.screen.ids('cues')).toEqual(one.screen.ids('cues'));
  });

  it('keep both where they change the same field, and say so where it is found out', async () => {
    const { one, other, house, kept, settle } = await twoTabs();
    await one.screen.edit(house, { massRatio: 31 });
    await other.screen.edit(house, { massRatio: 17 });
    await settle();
    expect((await kept())?.massRatio).toBe(17);
    const copies = one.screen.ids('cues').filter((id) => id?.startsWith(`${HOUSE}-`));
    expect(copies).toHaveLength(1);
    const [copy] = copies;
    expect(one.screen.cue(copy ?? '')).toMatchObject({
      name: `${house.name} (other tab)`,
      massRatio: 31,
    });
    expect(other.screen.cue(copy ?? '')).toEqual(one.screen.cue(copy ?? ''));
    expect(one.clashes).toEqual([]);
    expect(other.clashes).toMatchObject([
      { kind: 'both', id: HOUSE, name: house.name, copyName: `${house.name} (other tab)` },
    ]);
  });

  it('lose nothing of changes that follow each other faster than they are saved', async () => {
    const { one, other, house, kept, settle } = await twoTabs();
    await other.screen.edit(house, { tipRadiusM: 0.008 });
    const asked = [31, 32, 33].map((massRatio) => one.screen.edit(house, { massRatio }));
    await Promise.all([...asked, one.screen.edit(house, { tipDiameterM: 0.0125 })]);
    expect(await kept()).toMatchObject({
      massRatio: 33,
      tipRadiusM: 0.008,
      tipDiameterM: 0.0125,
    });
    await settle();
    expect(one.screen.cue(HOUSE)).toEqual(await kept());
    expect(one.clashes).toEqual([]);
  });

  it('lose nothing where one of them could not save for a while', async () => {
    const { one, other, house, kept, settle } = await twoTabs();
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('not now', 'QuotaExceededError');
    });
    await one.screen.edit(house, { massRatio: 31 });
    vi.restoreAllMocks();
    await other.screen.edit(house, { tipRadiusM: 0.008 });
    await settle();
    expect(one.screen.cue(HOUSE)).toMatchObject({ massRatio: 31, tipRadiusM: 0.008 });
    await one.store.saveUnsaved();
    expect(await kept()).toMatchObject({ massRatio: 31, tipRadiusM: 0.008 });
  });

  it('lose nothing where one is closed before it could save, and keep both of a clash', async () => {
    const { one, other, house, kept, openTab } = await twoTabs();
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('not now', 'QuotaExceededError');
    });
    await one.screen.edit(house, { massRatio: 31, tipDiameterM: 0.0125 });
    vi.restoreAllMocks();
    await other.screen.edit(house, { massRatio: 17, tipRadiusM: 0.008 });
    const next = await openTab();
    expect(await kept()).toMatchObject({ massRatio: 31, tipDiameterM: 0.0125, tipRadiusM: 0.008 });
    const names = next.screen.ids('cues').map((id) => next.screen.cue(id ?? ''));
    expect(names).toContainEqual(
      expect.objectContaining({ name: `${house.name} (other tab)`, massRatio: 17 }),
    );
    expect(next.clashes).toMatchObject([{ kind: 'both', store: 'cues' }]);
  });
});

describe('two tabs that change', () => {
  it('other balls of one position keep both places', async () => {
    const { one, other, settle } = await twoTabs();
    const [id = ''] = one.screen.ids('positions');
    const before = one.screen.position(id);
    const [first, second] = before.balls;
    const moved = (name: unknown, xM: number) =>
      before.balls.map((ball) => (ball.name === name ? { ...ball, xM } : ball));
    await one.screen.lay({ ...before, balls: moved(first?.name, 0.11), changedAtMs: 5 });
    await other.screen.lay({ ...before, balls: moved(second?.name, 0.22), changedAtMs: 6 });
    await settle();
    const { balls } = one.screen.position(id);
    expect(balls.map(({ xM }) => xM)).toEqual(
      before.balls.map(({ name, xM }) =>
        name === first?.name ? 0.11 : name === second?.name ? 0.22 : xM,
      ),
    );
    expect(other.screen.position(id)).toEqual(one.screen.position(id));
    expect([...one.clashes, ...other.clashes]).toEqual([]);
  });

  it('readings of one trial keep both; the same reading twice is kept twice, one struck out', async () => {
    const { one, other, settle } = await twoTabs();
    await one.store.put('attempts', CURVE_ATTEMPT);
    await settle();
    const read = (landingM: number) => ({
      ...CURVE_ATTEMPT,
      readings: { ...CURVE_ATTEMPT.readings, landingM },
    });
    await one.store.put('attempts', read(0.11));
    await other.store.put('attempts', read(0.22));
    const { attempts } = await other.store.loadAll();
    expect(attempts.map(({ readings, isStruckOut }) => [readings.landingM, isStruckOut])).toEqual(
      expect.arrayContaining([
        [0.22, false],
        [0.11, true],
      ]),
    );
    expect(attempts).toHaveLength(2);
  });

  it('settings and the shot keep both; where the shots clash, the other is held', async () => {
    const { one, other, settle } = await twoTabs();
    const { shot, preferences } = DEFAULT_DESK;
    await one.screen.saveDesk({ ...DEFAULT_DESK, shot: { ...shot, speedMps: 3 } });
    await other.screen.saveDesk({
      ...DEFAULT_DESK,
      preferences: { ...preferences, theme: 'light' },
      shot: { ...shot, cutRad: 0.3 },
    });
    await settle();
    expect(one.screen.desk()).toMatchObject({
      shot: { ...shot, speedMps: 3, cutRad: 0.3 },
      preferences: { ...preferences, theme: 'light' },
      heldShot: null,
    });
    expect(other.screen.desk()).toEqual(one.screen.desk());
    const now = one.screen.desk();
    await one.screen.saveDesk({ ...now, shot: { ...now.shot, speedMps: 1 } });
    await other.screen.saveDesk({ ...now, shot: { ...now.shot, speedMps: 4 } });
    await settle();
    expect(one.screen.desk()).toMatchObject({ shot: { speedMps: 4 }, heldShot: { speedMps: 1 } });
  });
});

describe('two tabs that change a player', () => {
  it('keep the name of the one and the answer of the other, and each shot of a log once', async () => {
    const { one, other, settle } = await twoTabs();
    await one.store.put('players', STUDENT);
    await settle();
    await one.store.put('players', { ...STUDENT, name: 'Ann', changedAtMs: 1 });
    await other.store.put('players', { ...STUDENT, madeOf10: 9, changedAtMs: 2 });
    await one.store.put('played', LAID_SHOT);
    await other.store.put('played', PLAIN_SHOT);
    await settle();
    const read = await one.store.readAll();
    if (!read.ok) throw new Error(read.reason);
    const { players, played } = read.contents;
    expect(players.filter(({ id }) => id.startsWith(STUDENT.id))).toMatchObject([
      { name: 'Ann', madeOf10: 9 },
    ]);
    expect(played).toEqual([LAID_SHOT, PLAIN_SHOT]);
    expect([...one.clashes, ...other.clashes]).toEqual([]);
  });

  it('keep both of what they say became of one shot, of which one counts', async () => {
    const { one, other, settle } = await twoTabs();
    await one.store.put('played', PLAIN_SHOT);
    await settle();
    await one.store.put('played', { ...PLAIN_SHOT, result: 'thin' });
    await other.store.put('played', { ...PLAIN_SHOT, result: 'full' });
    await settle();
    const read = await one.store.readAll();
    if (!read.ok) throw new Error(read.reason);
    expect(read.contents.played.map(({ result, asMeant }) => [result, asMeant]).sort()).toEqual([
      ['full', true],
      ['thin', false],
    ]);
    expect(other.clashes).toMatchObject([{ kind: 'both', store: 'played' }]);
  });
});
