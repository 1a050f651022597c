import { describe, expect, it } from 'vitest';
import { ANYBODY } from '../../../../src/state/player/rough-stroke';
import { createMemoryStore } from '../../../../src/store/memory-store';
import { createNoticeBoard } from '../../../../src/store/notice-board';
import { LAID_SHOT, PLAIN_SHOT } from '../../../store/invented-players';
import { inventedPlayerReport, openPlayer } from './open-player';

const { id: _id, playerId: _player, atMs: _at, modelVersion: _version, ...TO_LOG } = PLAIN_SHOT;

describe('logging', () => {
  it('makes a player where two tabs deleted the last two, and loses no shot', async () => {
    const { store } = await openPlayer();
    const loadAll = async () => ({ ...(await store.loadAll()), players: [] });
    const { player: empty } = await openPlayer({ kept: { ...store, loadAll } });
    expect(empty.players.value).toEqual([]);
    expect(empty.log(TO_LOG).ok).toBe(true);
    const [made] = empty.players.value;
    expect(empty.inPlay.value).toBe(made);
    expect(empty.played.value).toMatchObject([{ ...TO_LOG, playerId: made?.id }]);
  });
});

describe('learning whoever plays', () => {
  it('does nothing while nothing is known, and tells of somebody in the middle of all', async () => {
    const { player, rest, jobs } = await openPlayer();
    expect(await rest()).toBe(0);
    expect(jobs).toEqual([]);
    expect(player.isKnown.value).toBe(false);
    expect(player.isFresh.value).toBe(true);
    expect(player.profile.value).toEqual(ANYBODY);
  });

  it('learns from the answer a moment later, and from each shot logged', async () => {
    const { player, rest, jobs } = await openPlayer();
    player.answer(6);
    expect(player.isFresh.value).toBe(false);
    expect(player.isKnown.value).toBe(false);
    await rest();
    expect(player.isKnown.value).toBe(true);
    const answered = player.profile.value;
    player.log(TO_LOG);
    expect(player.isKnown.value).toBe(true);
    expect(player.profile.value).toBe(answered);
    await rest();
    expect(jobs.map(({ madeOf10, shots }) => [madeOf10, shots.length])).toEqual([
      [6, 0],
      [6, 1],
    ]);
    expect(player.profile.value.directionRad).toBeLessThan(answered.directionRad);
    expect(jobs[1]?.shots[0]).toMatchObject({ aimRad: PLAIN_SHOT.aimRad, counts: true });
  });

  it('gives back what was told of a shot’s line, which costs the most', async () => {
    const { player, rest, jobs } = await openPlayer();
    const logged = player.log(TO_LOG);
    await rest();
    player.log({ ...TO_LOG, shot: { ...TO_LOG.shot } });
    await rest();
    expect(jobs[0]?.shots[0]).not.toHaveProperty('line');
    expect(jobs[1]?.shots.map((shot) => 'line' in shot)).toEqual([true, false]);
    if (logged.ok) player.correct(logged.id, { result: 'thin' });
    await rest();
    expect(jobs[2]?.shots.map((shot) => 'line' in shot)).toEqual([true, true]);
  });

  it('learns nothing from a shot struck out, and from its change anew', async () => {
    const { player, rest, jobs } = await openPlayer();
    const logged = player.log(TO_LOG);
    if (!logged.ok) throw new Error(logged.problem);
    await rest();
    player.correct(logged.id, { cueBall: { x: 0, y: 0 } });
    expect(await rest()).toBe(0);
    player.correct(logged.id, { result: 'full' });
    await rest();
    expect(jobs.at(-1)?.shots.map(({ result }) => result)).toEqual(['full']);
    player.strikeOut(logged.id, true);
    expect(player.isKnown.value).toBe(false);
    expect(player.played.value).toMatchObject([{ result: 'full', asMeant: false }]);
    expect(await rest()).toBe(0);
  });

  it('shows the same at once at the next start, without any work', async () => {
    const kept = createMemoryStore(createNoticeBoard());
    const note = { text: null };
    const first = await openPlayer({ kept, note });
    first.player.answer(7);
    first.player.log(TO_LOG);
    await first.rest();
    const again = await openPlayer({ kept, note });
    expect(again.player.known.value).toEqual(first.player.known.value);
    expect(await again.rest()).toBe(0);
    expect(again.jobs).toEqual([]);
    const newer = await openPlayer({ kept, note, build: 'another' });
    expect(newer.player.isKnown.value).toBe(false);
    await newer.rest();
    expect(newer.jobs).toHaveLength(1);
  });

  it('takes no note that was damaged, or is no note', async () => {
    const kept = createMemoryStore(createNoticeBoard());
    const note: { text: string | null } = { text: null };
    const first = await openPlayer({ kept, note });
    first.player.answer(7);
    await first.rest();
    const whole = note.text ?? '';
    for (const text of [whole.replace('0.0', '0.1'), '[[1]]', '{}', 'torn', whole.slice(0, 40)]) {
      expect(text).not.toBe(whole);
      const again = await openPlayer({ kept, note: { text } });
      expect(again.player.isKnown.value).toBe(false);
      expect(await again.rest()).toBe(1);
    }
  });

  it('tells each player apart, and comes back to one without working again', async () => {
    const { player, rest, jobs } = await openPlayer();
    const { id } = player.inPlay.value;
    player.answer(9);
    await rest();
    const steady = player.profile.value;
    player.add('Student');
    expect(player.isKnown.value).toBe(false);
    player.answer(1);
    await rest();
    expect(player.profile.value.directionRad).toBeGreaterThan(steady.directionRad);
    player.choose(id);
    expect(player.profile.value).toEqual(steady);
    expect(await rest()).toBe(0);
    expect(jobs).toHaveLength(2);
  });

  it('says so where it cannot be worked out, or not here', async () => {
    const failing = await openPlayer({ report: () => Promise.reject(new Error('lost')) });
    failing.player.answer(5);
    await failing.rest();
    expect(failing.player.problem.value).toContain('could not be worked out');
    const alone = await openPlayer({ report: null });
    expect(alone.player.problem.value).toBeNull();
    alone.player.answer(5);
    expect(alone.player.problem.value).toContain('cannot work beside the page');
    const lost = await openPlayer({
      report: async (job) => ({ ...inventedPlayerReport(job), known: null }),
    });
    lost.player.answer(5);
    await lost.rest();
    expect(lost.player.isKnown.value).toBe(false);
  });
});

describe('who there is', () => {
  it('has one in play, whatever the desk says', async () => {
    const { player, desk } = await openPlayer();
    desk.setPlayer('gone');
    expect(player.inPlay.value).toBe(player.players.value[0]);
  });

  it('can be named, but not without a name', async () => {
    const { player, store } = await openPlayer();
    const added = player.add('  Ann ');
    if (!added.ok) throw new Error(added.problem);
    expect(player.inPlay.value).toMatchObject({ id: added.id, name: 'Ann', madeOf10: null });
    expect(player.rename(added.id, 'Bea')).toEqual({ ok: true });
    expect(player.rename(added.id, ' ')).toMatchObject({ ok: false });
    expect(player.rename('gone', 'Eve')).toMatchObject({ ok: false });
    expect(player.add('')).toMatchObject({ ok: false });
    const names = (await store.loadAll()).players.map(({ name }) => name);
    expect(names).toEqual(['You', 'Bea']);
  });

  it('goes with all of their shots, and comes back with them', async () => {
    const { player, store, note, rest } = await openPlayer();
    const first = player.inPlay.value.id;
    player.log(TO_LOG);
    player.add('Student');
    const student = player.inPlay.value.id;
    player.answer(5);
    await rest();
    expect(note.text).toContain(student);
    player.log({ ...TO_LOG, result: 'thin' });
    player.log({ ...TO_LOG, result: 'full' });
    expect(player.remove(student)).toEqual({ ok: true });
    expect(note.text ?? '').not.toContain(student);
    expect(player.inPlay.value.id).toBe(first);
    expect(player.tallyOf(student).shots).toBe(0);
    expect((await store.loadAll()).played.map(({ result }) => result)).toEqual(['went']);
    expect(player.lastDeleted.value).toMatchObject({ wasInPlay: true, shots: [{}, {}] });
    expect(player.restore()).toEqual({ ok: true });
    expect(player.inPlay.value.id).toBe(student);
    expect(player.played.value.map(({ result }) => result)).toEqual(['thin', 'full']);
    expect((await store.loadAll()).played).toHaveLength(3);
    expect(player.restore()).toMatchObject({ ok: false });
  });

  it('is never nobody', async () => {
    const { player } = await openPlayer();
    const { id } = player.inPlay.value;
    expect(player.remove(id)).toMatchObject({
      ok: false,
      problem: expect.stringContaining('only'),
    });
    expect(player.remove('gone')).toMatchObject({ ok: false });
    expect(player.choose('gone')).toMatchObject({ ok: false });
  });

  it('is asked once: an answer or putting it aside counts, and an answer can be taken back', async () => {
    const { player } = await openPlayer();
    expect(player.inPlay.value.wasAsked).toBe(false);
    player.putAside();
    expect(player.inPlay.value).toMatchObject({ wasAsked: true, madeOf10: null });
    player.answer(0);
    expect(player.inPlay.value.madeOf10).toBe(0);
    player.answer(null);
    expect(player.inPlay.value.madeOf10).toBeNull();
    expect(() => player.answer(11)).toThrow(RangeError);
  });
});

describe('a log', () => {
  it('belongs to whoever plays, and can be corrected, taken off and put back', async () => {
    const { player } = await openPlayer();
    const logged = player.log(TO_LOG);
    if (!logged.ok) throw new Error(logged.problem);
    expect(player.played.value).toMatchObject([
      { id: logged.id, playerId: player.inPlay.value.id, result: 'went' },
    ]);
    expect(player.correct('gone', { result: 'thin' })).toMatchObject({ ok: false });
    player.removeShot(logged.id);
    expect(player.played.value).toEqual([]);
    expect(player.lastRemoved.value?.id).toBe(logged.id);
    const me = player.inPlay.value.id;
    player.add('Student');
    expect(player.lastRemoved.value).toBeNull();
    player.choose(me);
    expect(player.restoreShot()).toEqual({ ok: true });
    expect(player.played.value).toHaveLength(1);
    expect(player.restoreShot()).toMatchObject({ ok: false });
  });

  it('puts back what was removed last alone, and nothing that was only taken back', async () => {
    const { player } = await openPlayer();
    const add = () => {
      const logged = player.log(TO_LOG);
      if (!logged.ok) throw new Error(logged.problem);
      return logged.id;
    };
    player.removeShot(add());
    expect(player.lastRemoved.value).not.toBeNull();
    const next = add();
    expect(player.lastRemoved.value).toBeNull();
    expect(player.restoreShot()).toMatchObject({ ok: false });
    expect(player.takeBack(next)).toEqual({ ok: true });
    expect(player.takeBack(next)).toMatchObject({ ok: false });
    expect(player.played.value).toEqual([]);
    expect(player.restoreShot()).toMatchObject({ ok: false });
    player.removeShot(add());
    player.forgetRemoved();
    expect(player.restoreShot()).toMatchObject({ ok: false });
  });

  it('goes out with its player alone, as a file that an import adds elsewhere', async () => {
    const { player, files } = await openPlayer();
    player.add('Ann B.');
    player.answer(4);
    player.log({ ...TO_LOG, position: LAID_SHOT.position });
    const stop = player.file.keepReady(player.inPlay.value.id);
    await expect.poll(() => player.file.isReady.value).toBe(true);
    await player.file.save();
    stop();
    expect(player.file.isReady.value).toBe(false);
    const [file] = files;
    expect(file?.name).toMatch(/^leeway-player-ann-b-\d{4}-\d{2}-\d{2}\.json$/);
    const text = (await file?.text()) ?? '';
    expect(text.split('\n').map((line) => /"store":"(\w+)"/.exec(line)?.[1])).toEqual([
      undefined,
      'players',
      'played',
      undefined,
      undefined,
    ]);
  });
});
