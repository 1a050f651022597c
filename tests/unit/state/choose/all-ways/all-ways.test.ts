import { describe, expect, it } from 'vitest';
import { INVENTED_PROFILES } from '../../../../../src/engine/room/stroke-profile';
import { isSafety, shotOf, struckAs } from '../../../../../src/state/choose/all-ways/shown-way';
import { answerAll, CUT, openChoose } from '../open-choose';

async function lookedAt() {
  const opened = await openChoose();
  const { model, hired } = opened;
  model.all.show('all');
  model.all.look();
  await answerAll(hired);
  const wayOf = (kind: string) => {
    const way = model.all.search.value.ways.find(({ told }) => told.goal.kind === kind);
    if (!way) throw new Error(`there is a ${kind}`);
    return way;
  };
  return { ...opened, wayOf };
}

describe('what is listed', () => {
  it('is the one straight shot where ball and pocket are chosen, else ways of every kind', async () => {
    const { model } = await openChoose();
    expect(model.all.filter.value).toBe('direct');
    expect(model.all.isDirect.value).toBe(true);
    model.playInto(null);
    expect(model.all.filter.value).toBe('all');
    expect(model.all.isDirect.value).toBe(false);
    model.all.show('direct');
    expect(model.all.isDirect.value).toBe(false);
    model.undo();
    expect(model.all.isDirect.value).toBe(true);
  });

  it('is ways of every kind where the straight way is closed', async () => {
    const { model } = await openChoose();
    model.playInto('near-left');
    expect(model.shot.value).toMatchObject({ ok: false });
    expect(model.all.filter.value).toBe('all');
  });
});

describe('looking by itself', () => {
  it('begins once all is at rest, and anew once something has changed', async () => {
    const { model, hired, rest } = await openChoose();
    const end = model.all.attend();
    rest();
    // The straight shot is listed, which is compared elsewhere.
    expect(model.all.search.value.state).toBe('none');
    model.all.show('bank');
    rest();
    expect(model.all.search.value.state).toBe('running');
    await answerAll(hired);
    model.allow('lowest');
    expect(model.all.search.value).toMatchObject({ state: 'done', isStale: true });
    rest();
    expect(model.all.search.value).toMatchObject({ state: 'running', isStale: false });
    end();
  });

  it('leaves what was told as it stands where more is known of who plays, until asked', async () => {
    const { model, hired, player, rest } = await lookedAt();
    model.all.attend();
    const { ways } = model.all.search.value;
    expect(model.all.search.value.isOutrun).toBe(false);
    player.profile.value = INVENTED_PROFILES.steady;
    rest();
    const { search } = model.all;
    expect(search.value).toMatchObject({ state: 'done', isStale: false, isOutrun: true });
    expect(search.value.ways).toEqual(ways);
    model.all.look();
    expect(search.value).toMatchObject({ state: 'running', isOutrun: false });
    // Nor is what is under way begun anew.
    const asked = hired.map((worker) => worker.asked.length);
    player.profile.value = INVENTED_PROFILES.club;
    rest();
    expect(search.value).toMatchObject({ state: 'running', isOutrun: true });
    expect(hired.map((worker) => worker.asked.length)).toEqual(asked);
  });

  it('begins anew for somebody else, or for who says how good they are', async () => {
    const { model, hired, player, rest } = await lookedAt();
    model.all.attend();
    const now = player.inPlay.value;
    for (const other of [
      { ...now, id: 'other' },
      { ...now, id: 'other', madeOf10: 7 },
    ]) {
      player.inPlay.value = other;
      expect(model.all.search.value).toMatchObject({ state: 'done', isStale: true });
      rest();
      expect(model.all.search.value).toMatchObject({ state: 'running', isStale: false });
      await answerAll(hired);
    }
    player.inPlay.value = { ...player.inPlay.value, name: 'Renamed' };
    expect(model.all.search.value).toMatchObject({ state: 'done', isStale: false });
  });

  it('takes nobody away from a way they look at', async () => {
    const { model, rest, wayOf } = await lookedAt();
    model.all.attend();
    const way = wayOf('bank');
    model.all.choose(way);
    model.nudge('cue', 0.05, 0);
    rest();
    expect(model.all.chosen.value).toBe(way);
    expect(model.all.isMoved.value).toBe(true);
    model.all.choose(null);
    rest();
    expect(model.all.search.value.state).toBe('running');
  });

  it('is gone with the position it was of', async () => {
    const { model } = await lookedAt();
    model.openPosition('other');
    expect(model.all.search.value).toMatchObject({ state: 'none', ways: [], isStale: false });
    expect(model.all.filter.value).toBe('direct');
  });
});

describe('aiming a way', () => {
  it('fills Shot in with a direct cut, and logs it as it lay', async () => {
    const { model, sent, wayOf } = await lookedAt();
    const way = wayOf('direct');
    model.all.choose(way);
    const shared = model.wayToAsk.value;
    expect(model.all.sendToShot()).toBe(true);
    expect(shared).toMatchObject({ asked: sent.asked, of: { ball: 3, pocket: 'far-right' } });
    const { speedMps, height } = struckAs(way.told).option.stroke;
    expect(sent.asked?.shot).toMatchObject({ speedMps, height });
    expect(sent.asked?.shot.headingRad).toBe(shotOf(way)?.headingRad);
    expect(model.all.toLog.value?.position?.goal).toMatchObject({ ball: 3, pocket: 'far-right' });
    expect(model.all.toLog.value?.position?.balls).toEqual(CUT.balls);
  });

  it('has nothing for Shot or the log where no straight line is meant', async () => {
    const { model, sent, wayOf } = await lookedAt();
    model.all.choose(wayOf('kick'));
    expect(model.wayToAsk.value).toBeNull();
    expect(model.all.sendToShot()).toBe(false);
    expect(sent.asked).toBeNull();
    expect(model.all.toLog.value).toBeNull();
  });

  it('has nothing for Shot, log or drills of a safety, which sends no ball anywhere', async () => {
    const { model, wayOf } = await lookedAt();
    model.all.choose(wayOf('kick'));
    expect(model.wayToKeep.value?.drill.kind).toBe('kick');
    model.all.choose(wayOf('safety'));
    expect(model.wayToKeep.value).toBeNull();
    expect(model.keepDrill('A safety').ok).toBe(false);
    expect(model.wayToAsk.value).toBeNull();
    expect(model.all.sendToShot()).toBe(false);
    expect(model.all.toLog.value).toBeNull();
  });

  it('sends nothing once balls have moved, and still does once more is known of the player', async () => {
    const { model, player, sent, wayOf } = await lookedAt();
    model.all.choose(wayOf('direct'));
    player.profile.value = INVENTED_PROFILES.steady;
    expect(model.all.toLog.value).not.toBeNull();
    model.nudge(8, 0.05, 0);
    expect(model.all.sendToShot()).toBe(false);
    expect(sent.asked).toBeNull();
  });
});

describe('the order of the list', () => {
  it('is by how often ways go once that is asked for, safeties last, and asks no worker', async () => {
    const { model, hired } = await lookedAt();
    const keys = () => model.all.search.value.ways.map(({ key }) => key);
    const byWorth = keys();
    const asked = hired.map((worker) => worker.asked.length);
    model.all.orderBy('goes');
    const { ways } = model.all.search.value;
    expect(model.all.orders.value).toEqual(['worth', 'goes']);
    const goes = ways.map(({ told }) => ('struck' in told ? -1 : told.chance));
    expect(goes).toEqual([...goes].sort((a, b) => b - a));
    expect(ways.slice(-2).every(isSafety)).toBe(true);
    expect([...keys()].sort()).toEqual([...byWorth].sort());
    expect(hired.map((worker) => worker.asked.length)).toEqual(asked);
    // By the zone only while there is one.
    model.markZone({ xM: 0, yM: 0, radiusM: 0.2 });
    expect(model.all.orders.value).toEqual(['worth', 'goes', 'zone']);
    model.all.orderBy('zone');
    expect(model.all.order.value).toBe('zone');
    model.markZone(null);
    expect(model.all.order.value).toBe('goes');
    model.all.orderBy('goes');
    // Another position is listed in the order that was asked for.
    model.openPosition('other');
    expect(model.all.order.value).toBe('goes');
    model.all.orderBy('worth');
    model.all.look();
    await answerAll(hired);
    expect(model.all.search.value.ways.slice(0, 2).every(isSafety)).toBe(true);
  });
});

describe('what may be hit first', () => {
  it('is kept with the position, and taken back like all else', async () => {
    const { model, stored } = await openChoose();
    model.allow([3, 8]);
    await model.flush();
    const kept = async () => (await stored()).find(({ id }) => id === 'cut')?.legal;
    expect(await kept()).toEqual([3, 8]);
    model.undo();
    await model.flush();
    expect(model.open.value.legal ?? 'any').toBe('any');
  });

  it('makes no change where it says what held already', async () => {
    const { model } = await openChoose();
    model.allow('any');
    expect(model.canUndo.value).toBe(false);
  });
});
