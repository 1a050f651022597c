import { signal } from '@preact/signals';
import { describe, expect, it } from 'vitest';
import type { LevelTable } from '../../../../src/engine/player/level-test';
import type { PlayerJob } from '../../../../src/engine/player/player-report';
import { createLevelTestModel } from '../../../../src/state/log/level-test-model';
import { TEST_SHOTS } from '../../../../src/state/log/level-tests';
import type { WhatBecame } from '../../../../src/state/player/played-edits';
import { parsePlayed } from '../../../../src/store/parse-played';
import type { StorePort } from '../../../../src/store/store-port';
import { inventedPlayerReport, openPlayer } from '../player/open-player';
import { inventedLevel, LEVEL_TABLE } from './invented-level';

const WENT: WhatBecame = { result: 'went', scratched: false, cueBall: null, asMeant: true };
const LEVEL = inventedLevel(20);

/** Tells most: what is laid the farthest up the list, less one a shot that was played. */
const tellingLast = async (job: PlayerJob) => ({
  ...inventedPlayerReport(job),
  next: (job.candidates?.length ?? 0) - 1,
});

interface Options {
  readonly kept?: StorePort;
  readonly lay?: ((table: LevelTable) => Promise<typeof LEVEL>) | null;
}

async function openTest({ kept, lay = async () => LEVEL }: Options = {}) {
  const opened = await openPlayer({ report: tellingLast, ...(kept && { kept }) });
  const table = signal(LEVEL_TABLE);
  let tests = 0;
  const test = createLevelTestModel({
    player: opened.player,
    table,
    lay,
    newId: () => {
      tests += 1;
      return `test-${tests}`;
    },
  });
  const settle = () => new Promise((resolve) => setTimeout(resolve, 0));
  const answer = async (became: Partial<WhatBecame> = {}) => {
    const answered = test.answer({ ...WENT, ...became });
    await settle();
    if (!answered.ok) throw new Error(answered.problem);
    return answered.id;
  };
  return { ...opened, test, table, settle, answer };
}

describe('the level test', () => {
  it('lays nothing, and works nothing out, until somebody plays it', async () => {
    const { test, jobs, settle } = await openTest();
    await settle();
    expect(test.next.value).toBeNull();
    expect(jobs).toEqual([]);
    test.play(false);
    await settle();
    expect(test.next.value).toBe(LEVEL.at(-1));
    expect(test.problem.value).toBeNull();
  });

  it('is told by its shots alone: one id, each laid elsewhere, as they can be read back', async () => {
    const { test, player, settle, answer } = await openTest();
    test.play(false);
    await settle();
    for (let shot = 0; shot < TEST_SHOTS; shot++) {
      expect(test.tests.value.filter(({ isDone }) => isDone)).toEqual([]);
      await answer({ result: shot % 2 === 0 ? 'went' : 'thin' });
    }
    const [only, ...others] = test.tests.value;
    expect(others).toEqual([]);
    expect(only).toMatchObject({ id: 'test-1', isDone: true });
    expect(test.unfinished.value).toBeNull();
    const laid = player.played.value.map(({ position }) => JSON.stringify(position?.balls));
    expect(new Set(laid).size).toBe(TEST_SHOTS);
    for (const shot of player.played.value) {
      expect(parsePlayed(shot)).toEqual({ ok: true, record: shot, repairs: [] });
    }
  });

  it('goes on where it was left, after another visit', async () => {
    const { test, store, settle, answer } = await openTest();
    test.play(false);
    await settle();
    await answer();
    await answer({ result: 'untouched', scratched: true });
    const expected = test.next.value;
    const again = await openTest({ kept: store });
    again.test.play(false);
    await again.settle();
    expect(again.test.unfinished.value?.shots).toHaveLength(2);
    expect(again.test.next.value).toEqual(expected);
    await again.answer();
    expect(again.test.tests.value.map(({ id }) => id)).toEqual(['test-1']);
  });

  it('lays the same again where a shot is taken back, or was not as meant', async () => {
    const { test, player, settle, answer } = await openTest();
    test.play(false);
    await settle();
    const first = test.next.value;
    const id = await answer();
    expect(test.next.value).not.toBe(first);
    player.strikeOut(id, true);
    await settle();
    expect(test.tests.value).toEqual([]);
    expect(test.next.value).toBe(first);
    player.strikeOut(id, false);
    player.removeShot(id);
    await settle();
    expect(test.next.value).toBe(first);
  });

  it('begins anew where that is asked for, and leaves what was left', async () => {
    const { test, settle, answer } = await openTest();
    test.play(false);
    await settle();
    await answer();
    const stop = test.play(true);
    await settle();
    expect(test.next.value).toBe(LEVEL.at(-1));
    await answer();
    await answer();
    expect(test.tests.value.map(({ id, shots }) => [id, shots.length])).toEqual([
      ['test-1', 1],
      ['test-2', 2],
    ]);
    stop();
    expect(test.next.value).toBeNull();
    expect(test.answer(WENT).ok).toBe(false);
  });

  it('is laid anew on another table', async () => {
    const laid: LevelTable[] = [];
    const { test, table, settle } = await openTest({
      lay: async (on) => {
        laid.push(on);
        return LEVEL;
      },
    });
    test.play(false);
    await settle();
    table.value = { ...LEVEL_TABLE };
    expect(test.next.value).toBeNull();
    await settle();
    expect(test.next.value).toBe(LEVEL.at(-1));
    expect(laid).toEqual([LEVEL_TABLE, table.value]);
  });

  it('tells of a test what its own fifteen shots tell, once, and anew when one is corrected', async () => {
    const { test, player, jobs, settle, answer } = await openTest();
    player.answer(7);
    test.play(false);
    await settle();
    let last = '';
    for (let shot = 0; shot < TEST_SHOTS; shot++) last = await answer();
    const before = jobs.length;
    const stop = test.tell();
    await settle();
    expect(jobs.slice(before).map(({ madeOf10, shots }) => [madeOf10, shots.length])).toEqual([
      [null, TEST_SHOTS],
    ]);
    expect(test.told.value.get('test-1')?.shots).toBe(TEST_SHOTS);
    stop();
    test.tell();
    await settle();
    expect(jobs).toHaveLength(before + 1);
    player.correct(last, { result: 'full' });
    await settle();
    expect(jobs.filter(({ madeOf10 }) => madeOf10 === null)).toHaveLength(2);
  });

  it('says why there is no shot: no workers, or one that failed', async () => {
    const none = await openTest({ lay: null });
    none.test.play(false);
    expect(none.test.problem.value).toMatch(/cannot work beside the page/);
    const failing = await openTest({
      lay: async () => {
        throw new Error('lost');
      },
    });
    failing.test.play(false);
    await failing.settle();
    expect(failing.test.problem.value).toMatch(/could not be worked out/);
  });
});
