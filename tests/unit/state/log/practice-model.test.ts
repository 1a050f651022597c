import { computed, signal } from '@preact/signals';
import { describe, expect, it } from 'vitest';
import type { DrillShot } from '../../../../src/engine/player/drill-shot';
import type { RungJob } from '../../../../src/engine/player/drill-shots';
import type { LimitsJob } from '../../../../src/engine/player/limits';
import type { PlayerJob } from '../../../../src/engine/player/player-report';
import { chanceAt } from '../../../../src/engine/player/staircase';
import { createPracticeModel } from '../../../../src/state/log/practice-model';
import type { WhatBecame } from '../../../../src/state/player/played-edits';
import { parsePlayed } from '../../../../src/store/parse-played';
import { parsePosition } from '../../../../src/store/parse-position';
import type { SavedPosition } from '../../../../src/store/saved-position';
import type { StorePort } from '../../../../src/store/store-port';
import type { Work } from '../../../../src/worker/engine-pool';
import { KEPT_DRILL } from '../../../store/invented-positions';
import { createRests } from '../at-rest';
import { CUT, KNOWN, NINE_FOOT, openChoose } from '../choose/open-choose';
import { inventedPlayerReport, openPlayer } from '../player/open-player';
import { inventedLevel, LEVEL_TABLE } from './invented-level';

const WENT: WhatBecame = { result: 'went', scratched: false, cueBall: null, asMeant: true };
const SPOT = { xM: 0.2, yM: 0.4, radiusM: 0.06, low: -0.1, high: 0.1 };
const DRILLS: readonly DrillShot[] = inventedLevel(20).map((shot, at) => ({
  ...shot,
  room: 0.001 * (1 + at),
  rest: null,
}));

/** The first of all that is not to be left out; tells the chance that was asked for. */
function invented(jobs: { rungs: RungJob[]; limits: LimitsJob[] }): Work {
  return (async (name: string, job: unknown) => {
    if (name === 'drills') {
      const { theme } = job as { theme: string };
      return theme === 'speed' ? DRILLS.map((one) => ({ ...one, rest: SPOT })) : DRILLS;
    }
    if (name === 'rung') {
      const asked = job as RungJob;
      jobs.rungs.push(asked);
      return { at: asked.not.includes(0) ? 4 : 0, chance: asked.chance };
    }
    jobs.limits.push(job as LimitsJob);
    return { share: 0.5, gains: { line: 0.2, speed: 0.1, kit: 0 }, shots: 10, isOwn: true };
  }) as Work;
}

interface Options {
  readonly kept?: StorePort;
  readonly work?: Work | null;
  readonly positions?: readonly SavedPosition[];
}

async function openPractice(options: Options = {}) {
  const { kept, positions = [CUT, KEPT_DRILL] } = options;
  const report = async (job: PlayerJob) => inventedPlayerReport(job);
  const opened = await openPlayer({ report, ...(kept && { kept }) });
  const choose = await openChoose({ positions });
  const jobs = { rungs: [] as RungJob[], limits: [] as LimitsJob[] };
  const level = signal(LEVEL_TABLE);
  const { later, rest } = createRests();
  const practice = createPracticeModel({
    player: opened.player,
    choose: choose.model,
    level,
    table: signal(NINE_FOOT),
    knowledge: computed(() => KNOWN),
    work: options.work === undefined ? invented(jobs) : options.work,
    later,
  });
  const settle = () => new Promise((resolve) => setTimeout(resolve, 0));
  const answer = async (became: Partial<WhatBecame> = {}, stopped: 'in' | 'long' | null = null) => {
    const answered = practice.answer({ ...WENT, ...became }, stopped);
    await settle();
    if (!answered.ok) throw new Error(answered.problem);
    return answered.id;
  };
  return {
    ...opened,
    learnt: opened.jobs,
    choose,
    practice,
    level,
    jobs,
    settle,
    answer,
    restLimits: rest,
  };
}

const MISSED = { result: 'thin' } as const;
const lieOf = ({ position }: { position: { balls: unknown } | null }) =>
  JSON.stringify(position?.balls);

describe('a ladder', () => {
  it('lays one shot for a set, asks seven in ten of it at first, and less after five of five', async () => {
    const { practice, player, jobs, settle, answer } = await openPractice();
    await settle();
    expect(practice.next.value).toBeNull();
    practice.play('line');
    await settle();
    const first = practice.next.value;
    expect(first?.rung).toEqual({ chance: chanceAt(0), room: 0.001, rest: null, stopped: null });
    for (let made = 0; made < 4; made++) {
      await answer();
      expect(practice.next.value && lieOf(practice.next.value.asked)).toBe(
        first && lieOf(first.asked),
      );
    }
    expect(practice.ladders.value.line.set).toHaveLength(4);
    expect(jobs.rungs).toHaveLength(1);
    await answer();
    expect(practice.ladders.value.line).toMatchObject({ level: 1, made: 5, set: [], lastStep: 1 });
    expect(jobs.rungs.at(-1)).toMatchObject({ chance: chanceAt(1), not: [0] });
    expect(practice.next.value && lieOf(practice.next.value.asked)).not.toBe(
      first && lieOf(first.asked),
    );
    for (const shot of player.played.value) {
      expect(shot.drill).toMatchObject({ id: 'line' });
      expect(parsePlayed(shot)).toEqual({ ok: true, record: shot, repairs: [] });
    }
  });

  it('is easier after three misses; a try that was not as meant, or taken back, is none', async () => {
    const { practice, player, settle, answer } = await openPractice();
    practice.play('line');
    await settle();
    await answer(MISSED);
    player.strikeOut(await answer(MISSED), true);
    player.removeShot(await answer(MISSED));
    await settle();
    expect(practice.ladders.value.line).toMatchObject({ level: 0, made: 0 });
    expect(practice.ladders.value.line.set).toHaveLength(1);
    await answer(MISSED);
    await answer(MISSED);
    expect(practice.ladders.value.line).toMatchObject({ level: -1, set: [], lastStep: -1 });
    expect(practice.ladders.value.speed.tries).toEqual([]);
  });

  it('has five tries to a set at most, whatever was put back into it or struck out', async () => {
    const { practice, player, settle, answer } = await openPractice();
    practice.play('line');
    await settle();
    const first = practice.next.value;
    const early = await answer(MISSED);
    player.strikeOut(early, true);
    await settle();
    for (const became of [MISSED, {}, MISSED, {}, {}]) await answer(became);
    expect(practice.ladders.value.line).toMatchObject({ level: 0, made: 3, set: [] });
    await answer();
    await answer();
    const laid = practice.next.value;
    expect(laid && lieOf(laid.asked)).not.toBe(first && lieOf(first.asked));
    // With a third miss the first set ends two tries sooner.
    player.strikeOut(early, false);
    await settle();
    const { level, set, lastSet } = practice.ladders.value.line;
    expect([level, set.length, lastSet.length]).toEqual([-1, 2, 4]);
    expect(practice.next.value && lieOf(practice.next.value.asked)).toBe(laid && lieOf(laid.asked));
  });

  it('goes on with its set after another visit; on another table it lays another', async () => {
    const { practice, store, settle, answer } = await openPractice();
    practice.play('side');
    await settle();
    await answer();
    await answer(MISSED);
    const expected = practice.next.value;
    const again = await openPractice({ kept: store });
    again.practice.play('side');
    // Nothing has to be worked out for that.
    expect(again.practice.next.value).toEqual(expected);
    expect(again.practice.ladders.value.side).toMatchObject({ made: 1 });
    const { shape } = LEVEL_TABLE;
    again.level.value = { ...LEVEL_TABLE, shape: { ...shape, lengthM: 2.2 } };
    await again.settle();
    expect(again.practice.next.value?.asked.position?.lengthM).toBe(2.2);
    expect(again.jobs.rungs).toHaveLength(1);
  });

  it('is made on a spot alone where the cue ball was to stop there, and teaches that', async () => {
    const { practice, player, learnt, settle, answer, rest } = await openPractice();
    practice.play('speed');
    await settle();
    await answer({}, 'in');
    await answer({}, 'long');
    await answer(MISSED, 'in');
    expect(practice.ladders.value.speed).toMatchObject({ made: 1 });
    const stopped = player.played.value.map(({ drill }) => drill?.rung?.stopped);
    expect(stopped).toEqual(['in', 'long', null]);
    await rest();
    const { low, high } = SPOT;
    expect(learnt.at(-1)?.shots.map((shot) => shot.rest)).toEqual([
      expect.objectContaining({ low, high, stopped: 'in' }),
      expect.objectContaining({ low, high, stopped: 'long' }),
      undefined,
    ]);
  });

  it('says why there is none: no workers, or one that failed', async () => {
    const none = await openPractice({ work: null });
    none.practice.play('line');
    expect(none.practice.problem.value).toMatch(/cannot work beside the page/);
    expect(none.practice.answer(WENT, null).ok).toBe(false);
    const failing = await openPractice({
      work: (async () => {
        throw new Error('lost');
      }) as Work,
    });
    failing.practice.play('line');
    await failing.settle();
    expect(failing.practice.problem.value).toMatch(/no shot to practise/);
  });
});

describe('what limits most', () => {
  it('is worked out at rest while somebody looks, of shots that count, each once', async () => {
    const { practice, player, jobs, settle, answer, rest, restLimits } = await openPractice();
    practice.play('line');
    await settle();
    await answer();
    await answer();
    player.strikeOut(await answer(), true);
    await rest();
    expect(practice.limits.value).toBeNull();
    const stop = practice.weigh();
    await restLimits();
    expect(practice.limits.value?.gains.line).toBe(0.2);
    expect(jobs.limits.map(({ own }) => own.length)).toEqual([1]);
    stop();
    await answer(MISSED);
    await rest();
    await restLimits();
    expect(jobs.limits).toHaveLength(1);
  });

  it('is nothing of whom nothing is known', async () => {
    const { practice, jobs, restLimits } = await openPractice();
    practice.weigh();
    await restLimits();
    expect(practice.limits.value).toBeNull();
    expect(jobs.limits).toEqual([]);
  });
});

describe('a way that was kept', () => {
  it('is listed apart from positions, laid on the table in play, and counted by who plays', async () => {
    const { practice, player, choose } = await openPractice();
    const { model } = choose;
    const { kept } = practice;
    expect(model.saved.value.map(({ id }) => id)).toEqual([CUT.id]);
    expect(model.open.value.id).toBe(CUT.id);
    const [bank] = kept.all.value;
    if (bank === undefined) throw new Error('it is not kept');
    expect(kept.lay(bank)).toMatchObject({ asked: null, problem: null, stroke: bank.drill.stroke });
    // The tries are a student's, who does not play.
    expect(kept.tally(bank)).toEqual({ tries: 0, made: 0 });
    for (const went of [true, false, true]) expect(kept.count(bank, went).ok).toBe(true);
    const now = () => kept.find(bank.id) ?? bank;
    expect(kept.tally(now())).toEqual({ tries: 3, made: 2 });
    kept.takeBack(bank.id);
    expect(kept.tally(now())).toEqual({ tries: 2, made: 1 });
    expect(parsePosition(now())).toEqual({ ok: true, record: now(), repairs: [] });
    expect((await choose.stored()).find(({ id }) => id === bank.id)).toEqual(now());
    expect(player.played.value).toEqual([]);
    model.remove(bank.id);
    expect(kept.all.value).toEqual([]);
    model.restore();
    expect(kept.all.value.map(({ id }) => id)).toEqual([bank.id]);
  });

  it('is told to point elsewhere on a table of another size', async () => {
    const smaller = { ...KEPT_DRILL, lengthM: 1.9812, widthM: 0.9906 };
    const { practice } = await openPractice({ positions: [CUT, smaller] });
    const [bank] = practice.kept.all.value;
    expect(bank && practice.kept.lay(bank).problem).toMatch(/another size/);
  });

  it('is logged as a shot where it is a direct cut, with the aim of the kit in play', async () => {
    const stroke = { aimRad: 0.3, side: 0.1, height: 0, elevationRad: 0.05, speedMps: 2 };
    const drill = { kind: 'direct', via: [{ ball: 3, by: 'cue' }], stroke, tries: [] } as const;
    const cut = { ...CUT, id: 'kept-cut', name: 'My cut', drill };
    const { practice, player } = await openPractice({ positions: [CUT, cut] });
    const [kept] = practice.kept.all.value;
    if (kept === undefined) throw new Error('it is not kept');
    const { asked } = practice.kept.lay(kept);
    if (asked === null) throw new Error('there is no shot');
    expect(asked.shot).toMatchObject({ side: 0.1, speedMps: 2 });
    expect(practice.kept.log(kept, asked, WENT).ok).toBe(true);
    const [shot] = player.played.value;
    expect(shot?.drill).toEqual({ id: 'kept-cut', rung: null });
    expect(shot && parsePlayed(shot)).toEqual({ ok: true, record: shot, repairs: [] });
    expect(practice.kept.tally(kept)).toEqual({ tries: 1, made: 1 });
    expect(practice.ladders.value.line.tries).toEqual([]);
  });
});
