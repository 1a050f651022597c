import { describe, expect, it } from 'vitest';
import { INVENTED_PROFILES } from '../../../../src/engine/room/stroke-profile';
import type { Comparison } from '../../../../src/state/choose/choose-model';
import type { OptionJob, SweepJob } from '../../../../src/worker/engine-work';
import { answerAll, answerOne, giveUp, openChoose, settle } from './open-choose';

/** A whole comparison by so many workers, who are done in an order that a seed shuffles. */
async function compared(workers: number, seed: number): Promise<Comparison> {
  const { model, hired } = await openChoose({ workers });
  model.compare();
  await answerAll(hired, seed);
  return model.comparison.value;
}

describe('comparing all ways', () => {
  it('comes out the same whatever the number of workers, and in whatever order they are done', async () => {
    const alone = await compared(1, 1);
    expect(alone).toMatchObject({ state: 'done', progress: 1, problem: null, isStale: false });
    expect(alone.ways.length).toBeGreaterThan(3);
    expect(alone.map?.best.flat().filter(Boolean).length).toBeGreaterThan(50);
    for (const [workers, seed] of [
      [2, 1],
      [3, 1],
      [3, 77],
      [3, 991],
    ] as const) {
      expect(await compared(workers, seed)).toEqual(alone);
    }
  });

  it('deals the grid in order, a stretch at a time, to every worker there is', async () => {
    const { model, hired } = await openChoose({ workers: 3 });
    model.compare();
    expect(hired).toHaveLength(3);
    const stretches = () =>
      hired.flatMap(({ asked }) => asked.map(({ job }) => (job as SweepJob).stretch));
    const [first, second, third] = stretches();
    expect(first?.from).toBe(0);
    expect(second?.from).toBe(first?.to);
    expect(third?.from).toBe(second?.to);
    answerOne(hired);
    await settle();
    expect(stretches().map(({ from }) => from)).toContain(third?.to);
    expect(stretches()).toHaveLength(4);
  });

  it('shows a picture after the first stretch, and how far it has come', async () => {
    const { model, hired } = await openChoose({ workers: 2 });
    model.compare();
    expect(model.comparison.value).toMatchObject({ state: 'running', progress: 0, map: null });
    answerOne(hired);
    await settle();
    const { map, progress, ways } = model.comparison.value;
    expect(map?.best.flat().some((option) => option !== null)).toBe(true);
    expect(progress).toBeGreaterThan(0);
    expect(progress).toBeLessThan(0.1);
    expect(ways).toEqual([]);
  });

  it('brings the ways one by one, the easiest first, and never goes back', async () => {
    const { model, hired } = await openChoose({ workers: 1 });
    const counts: number[] = [];
    const steps: number[] = [];
    model.compare();
    for (let step = 0; step < 200 && model.comparison.value.state === 'running'; step += 1) {
      answerOne(hired);
      await settle();
      const { ways, progress } = model.comparison.value;
      counts.push(ways.length);
      steps.push(progress);
      const chances = ways.map(({ chance }) => chance);
      expect(chances).toEqual([...chances].sort((a, b) => b - a));
    }
    expect(counts.at(-1)).toBe(9);
    expect(counts).toEqual([...counts].sort((a, b) => a - b));
    expect(new Set(counts).size).toBe(10);
    expect(steps).toEqual([...steps].sort((a, b) => a - b));
    expect(model.comparison.value.state).toBe('done');
  });

  it('stops when told to, keeps what there is, and asks nothing more', async () => {
    const { model, hired } = await openChoose({ workers: 2 });
    model.compare();
    answerOne(hired);
    await settle();
    const before = model.comparison.value;
    const asked = hired.map(({ asked }) => asked.length);
    model.stop();
    await answerAll(hired);
    expect(model.comparison.value).toEqual({ ...before, state: 'stopped' });
    expect(hired.map(({ asked }) => asked.length)).toEqual(asked);
    model.stop();
    expect(model.comparison.value.state).toBe('stopped');
  });

  it('gives way to the next one, whose answers alone count', async () => {
    const { model, hired } = await openChoose({ workers: 2 });
    model.compare();
    answerOne(hired);
    await settle();
    model.nudge('cue', 0.1, 0);
    model.compare();
    expect(model.comparison.value).toMatchObject({ state: 'running', progress: 0, map: null });
    await answerAll(hired);
    expect(model.comparison.value.isStale).toBe(false);
    const shot = model.shot.value;
    if (!shot?.ok) throw new Error('there is a shot');
    const jobs = hired.flatMap(({ asked }) => asked).filter(({ name }) => name === 'refine');
    expect(jobs.length).toBeGreaterThan(0);
    const lies = jobs.map(({ job }) => (job as OptionJob).asked.question.distanceM);
    expect(lies.filter((distanceM) => distanceM !== shot.distanceM)).toEqual([]);
  });

  it('is out of date once position, kit, table or player change, and not when that is undone', async () => {
    const { model, hired, knowledge, player, table } = await openChoose();
    model.compare();
    await answerAll(hired);
    const isStale = () => model.comparison.value.isStale;
    model.nudge(8, 0.05, 0);
    expect(isStale()).toBe(true);
    model.undo();
    expect(isStale()).toBe(false);
    model.playBall(null);
    expect(isStale()).toBe(true);
    model.undo();
    const known = knowledge.value;
    knowledge.value = { ...known, spread: { ...known.spread, massRatio: 0.01 } };
    expect(isStale()).toBe(true);
    knowledge.value = known;
    player.profile.value = INVENTED_PROFILES.steady;
    expect(isStale()).toBe(true);
    player.profile.value = INVENTED_PROFILES.club;
    const former = table.value;
    table.value = { ...former, lengthM: 2.3 };
    expect(isStale()).toBe(true);
    table.value = former;
    model.rename('cut', 'Renamed');
    expect(isStale()).toBe(false);
  });

  it('sees the table’s slope along the shot, and the whole table with it as measured', async () => {
    const { model, hired, knowledge } = await openChoose();
    const { kit } = knowledge.value;
    // Down to the right of one at the break end; the shot runs up the table and to the right.
    const bedSlope = { alongM_per_M: 0, rightM_per_M: 0.002 };
    knowledge.value = { ...knowledge.value, kit: { ...kit, bedSlope } };
    model.compare();
    const shot = model.shot.value;
    if (!shot?.ok) throw new Error('there is a shot');
    const job = hired[0]?.asked[0]?.job as SweepJob;
    const seen = job.asked.question.kit.bedSlope;
    expect(seen.rightM_per_M).toBeCloseTo(0.002 * Math.cos(shot.headingRad), 12);
    expect(seen.alongM_per_M).toBeCloseTo(0.002 * Math.sin(shot.headingRad), 12);
    await answerAll(hired);
    const pick = hired[0]?.asked.find(({ name }) => name === 'pick')?.job;
    expect(pick).toMatchObject({ asked: { scene: { kit: { bedSlope } } } });
  });

  it('says so where workers break down, and goes well the next time', async () => {
    const { model, hired } = await openChoose({ workers: 2 });
    model.compare();
    giveUp(hired, 1);
    await answerAll(hired);
    expect(model.comparison.value).toMatchObject({ state: 'failed' });
    expect(model.comparison.value.problem).toMatch(/try again/);
    model.compare();
    await answerAll(hired);
    expect(model.comparison.value).toMatchObject({ state: 'done', problem: null });
  });

  it('says what is missing where there is nothing to compare', async () => {
    const { model } = await openChoose();
    model.playInto(null);
    model.compare();
    expect(model.comparison.value).toMatchObject({ state: 'none' });
    expect(model.comparison.value.problem).toMatch(/ball and a pocket/);
    model.undo();
    model.takeOff('cue');
    model.compare();
    expect(model.comparison.value.problem).toBe('There is no cue ball on the table.');
  });

  it('says kindly that it cannot where the browser has no workers', async () => {
    const { model } = await openChoose({ workers: 0 });
    model.compare();
    expect(model.comparison.value).toMatchObject({ state: 'none', ways: [] });
    expect(model.comparison.value.problem).toMatch(/cannot work beside the page/);
  });

  it('is gone with the position it was of', async () => {
    const { model, hired } = await openChoose();
    model.compare();
    await answerAll(hired);
    model.openPosition('other');
    expect(model.comparison.value).toMatchObject({ state: 'none', map: null, isStale: false });
    expect(model.comparison.value.ways).toEqual([]);
  });
});
