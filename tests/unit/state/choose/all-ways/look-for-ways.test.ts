import { describe, expect, it } from 'vitest';
import type { WaysRefineJob, WaysSearchJob } from '../../../../../src/engine/worth/plays-work';
import type { WaysSearch } from '../../../../../src/state/choose/all-ways/all-ways';
import { isSafety, struckAs } from '../../../../../src/state/choose/all-ways/shown-way';
import { answerAll, answerOne, giveUp, openChoose, settle } from '../open-choose';

async function looked(workers: number, seed: number) {
  const opened = await openChoose({ workers });
  const { model, hired } = opened;
  const seen: string[][] = [];
  model.all.search.subscribe(({ ways }) => seen.push(ways.map(({ key }) => key)));
  model.all.look();
  await answerAll(hired, seed);
  return { ...opened, seen, search: model.all.search.value };
}

const speeds = ({ ways }: WaysSearch) =>
  ways.map(({ told }) => struckAs(told).option.stroke.speedMps);

describe('looking for all ways', () => {
  it('comes out the same whatever the number of workers, and in whatever order they are done', async () => {
    const alone = await looked(1, 1);
    expect(alone.search).toMatchObject({ state: 'done', problem: null, isStale: false });
    expect(alone.search.ways).toHaveLength(12);
    for (const [workers, seed] of [
      [2, 5],
      [3, 77],
      [4, 991],
    ] as const) {
      const other = await looked(workers, seed);
      expect(other.search).toEqual(alone.search);
    }
  });

  it('shows ways as they come, each below those before, and in order at the end', async () => {
    const { seen, search } = await looked(3, 77);
    const growing = seen.slice(0, -1);
    for (const [at, keys] of growing.entries()) {
      const before = growing[at - 1] ?? [];
      expect(keys.slice(0, before.length)).toEqual(before);
    }
    expect([...(growing.at(-1) ?? [])].sort()).toEqual([...(seen.at(-1) ?? [])].sort());
    // Invented workers tell the softest first, after the safeties.
    expect(search.ways.slice(0, 2).map(({ told }) => told.goal.kind)).toEqual(['safety', 'safety']);
    expect(speeds(search).slice(2)).toEqual([...speeds(search)].slice(2).sort((a, b) => a - b));
    expect(search.ways.filter(isSafety).map(({ fan }) => fan.map(({ hit }) => hit))).toEqual([
      ['true'],
      ['true'],
    ]);
  });

  it('has the first three ways on screen before all parts are looked at', async () => {
    const { model, hired } = await openChoose({ workers: 1 });
    model.all.look();
    const named = (name: string) =>
      hired.flatMap(({ asked }) => asked).filter((one) => one.name === name);
    for (let step = 0; step < 100 && model.all.search.value.ways.length < 3; step++) {
      answerOne(hired);
      await settle();
    }
    expect(model.all.search.value.ways).toHaveLength(3);
    expect(model.all.search.value.state).toBe('running');
    expect(named('waysNone')).toEqual([]);
    // The likeliest of the first six parts: 0, 0.7, 0.4, 0.1, 0.8 and 0.5.
    expect(model.all.search.value.ways.map(({ told }) => told.worth.goes)).toEqual([0.8, 0.7, 0.5]);
    await answerAll(hired);
    const worked = named('waysRefine').map(({ job }) => (job as WaysRefineJob).way.stroke.speedMps);
    expect(new Set(worked).size).toBe(worked.length);
  });

  it('counts parts and ways, forwards alone', async () => {
    const { model, hired } = await openChoose({ workers: 2 });
    const steps: (readonly [number, number])[] = [];
    model.all.search.subscribe(({ done, of }) => steps.push([done, of]));
    model.all.look();
    await answerAll(hired);
    const done = steps.map(([count]) => count);
    expect(done).toEqual([...done].sort((a, b) => a - b));
    expect(steps.every(([count, of]) => count <= of)).toBe(true);
    expect(steps.at(-1)).toEqual([24, 24]);
  });

  it('asks for what is chosen: any ball and pocket, and what may be hit first', async () => {
    const { model, hired } = await openChoose();
    model.playBall(null);
    model.allow([8]);
    model.all.look();
    // What parts there are is asked first, of ways and of safeties.
    for (let parts = 0; parts < 2; parts++) {
      answerOne(hired);
      await settle();
    }
    const jobs = hired.flatMap(({ asked }) => asked.map(({ job }) => job as WaysSearchJob));
    const kinds = ['direct', 'bank', 'kick', 'combination', 'carom'];
    const question = { ball: null, pocket: 'far-right', legal: [8], kinds, zone: null };
    expect(jobs.at(-1)).toMatchObject({ question });
  });

  it('stops when told to, keeps what there is, and asks nothing more', async () => {
    const { model, hired } = await openChoose({ workers: 1 });
    model.all.look();
    while (model.all.search.value.ways.length < 2) {
      answerOne(hired);
      await settle();
    }
    const before = model.all.search.value;
    const asked = hired.map((worker) => worker.asked.length);
    model.all.stop();
    await answerAll(hired);
    expect(model.all.search.value).toEqual({ ...before, state: 'stopped' });
    expect(hired.map((worker) => worker.asked.length)).toEqual(asked);
  });

  it('says so where workers break down, and goes well the next time', async () => {
    const { model, hired } = await openChoose({ workers: 2 });
    model.all.look();
    await settle();
    giveUp(hired, 0);
    await answerAll(hired);
    expect(model.all.search.value).toMatchObject({ state: 'failed' });
    expect(model.all.search.value.problem).toMatch(/try again/);
    model.all.look();
    await answerAll(hired);
    expect(model.all.search.value).toMatchObject({ state: 'done', problem: null });
  });

  it('says what is missing where there is nothing to look for', async () => {
    const { model } = await openChoose();
    model.takeOff('cue');
    model.all.look();
    expect(model.all.search.value.problem).toBe('There is no cue ball on the table.');
    const none = await openChoose({ workers: 0 });
    none.model.all.look();
    expect(none.model.all.search.value.problem).toMatch(/cannot work beside the page/);
  });
});
