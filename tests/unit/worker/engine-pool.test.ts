import { describe, expect, it } from 'vitest';
import type { FitJob } from '../../../src/engine/fit/fit-report';
import { createEnginePool } from '../../../src/worker/engine-pool';
import { findEngineWorker, workerCount } from '../../../src/worker/find-engine-worker';
import { type FakeWorker, workshop } from './fake-worker';
import { answerFit, expectFirstGivenUp, jobOf } from './invented-jobs';

/** The shares of the jobs that a worker was asked for, in order. */
function sharesOf({ asked }: FakeWorker): number[] {
  return asked.map(({ job }) => (job as FitJob).scatter.speedShare);
}

/** A clock that looks when told to. */
function fakeClock() {
  const lookers = new Set<() => void>();
  const look = () => {
    for (const one of lookers) one();
  };
  return {
    every: (_ms: number, work: () => void) => {
      lookers.add(work);
      return () => void lookers.delete(work);
    },
    look,
    /** How many looks it took. */
    lookUntil(isSo: () => boolean): number {
      let looks = 0;
      for (; !isSo(); looks++) {
        if (looks > 1000) throw new Error('it never came to that');
        look();
      }
      return looks;
    },
    lookers: () => lookers.size,
  };
}

/** A pool of so many workers at most, and those hired so far. */
function openPool(most: number, every?: ReturnType<typeof fakeClock>['every']) {
  const { hired, make } = workshop();
  return { hired, work: createEnginePool(make, most, every) };
}

describe('a pool of workers', () => {
  it('hires no more workers than there are jobs, nor than it may', () => {
    const { hired, work } = openPool(2);
    expect(hired).toHaveLength(0);
    void work('fit', jobOf(0.1));
    expect(hired).toHaveLength(1);
    void work('fit', jobOf(0.2));
    void work('fit', jobOf(0.3));
    expect(hired).toHaveLength(2);
  });

  it('deals jobs in the order in which they were asked for, to whoever is free', async () => {
    const { hired, work } = openPool(2);
    const reports = [0.1, 0.2, 0.3, 0.4].map((share) => work('fit', jobOf(share)));
    answerFit(hired[1]);
    answerFit(hired[1]);
    answerFit(hired[0]);
    answerFit(hired[1]);
    expect(hired.map(sharesOf)).toEqual([[0.1], [0.2, 0.3, 0.4]]);
    const stretches = (await Promise.all(reports)).map(({ stretch }) => stretch);
    expect(stretches).toEqual([0.1, 0.2, 0.3, 0.4]);
  });

  it('begins nothing that is no longer wanted, and tells so at once', async () => {
    const { hired, work } = openPool(1);
    const unwanted = new AbortController();
    const jobs = [0.1, 0.2, 0.3].map((share) => work('fit', jobOf(share), unwanted.signal));
    const wanted = work('fit', jobOf(0.4));
    unwanted.abort();
    for (const job of jobs) await expect(job).rejects.toMatchObject({ name: 'AbortError' });
    answerFit(hired[0]);
    answerFit(hired[0]);
    expect((await wanted).stretch).toBe(0.4);
    expect(hired.map(sharesOf)).toEqual([[0.1, 0.4]]);
    await expect(work('fit', jobOf(0.5), unwanted.signal)).rejects.toMatchObject({
      name: 'AbortError',
    });
    expect(hired.map(sharesOf)).toEqual([[0.1, 0.4]]);
  });

  it.each(['error', 'messageerror'] as const)(
    'has a job done again at an event of %s, by a new worker',
    async (type) => {
      const { hired, work } = openPool(1);
      const first = work('fit', jobOf(0.1));
      const second = work('fit', jobOf(0.2));
      hired[0]?.fail(type);
      expect(hired[0]?.isTerminated()).toBe(true);
      // What the dead one still says is nothing to anyone.
      hired[0]?.fail(type);
      answerFit(hired[0]);
      answerFit(hired[1]);
      expect((await first).stretch).toBe(0.1);
      answerFit(hired[1]);
      expect((await second).stretch).toBe(0.2);
      expect(hired.map(sharesOf)).toEqual([[0.1], [0.1, 0.2]]);
    },
  );

  it('says so kindly where the third worker fails too, and goes on with the next job', async () => {
    const { hired, work } = openPool(1);
    const first = work('fit', jobOf(0.1));
    const second = work('fit', jobOf(0.2));
    for (let worker = 0; worker < 3; worker++) hired[worker]?.fail('error');
    await expectFirstGivenUp(hired, first, second);
    expect(hired.map(sharesOf)).toEqual([[0.1], [0.1], [0.1], [0.2]]);
  });

  it('passes on why a job failed, and keeps the worker', async () => {
    const { hired, work } = openPool(1);
    const first = work('fit', jobOf(0.1));
    hired[0]?.say({ id: hired[0].asked[0]?.id, ok: false, message: 'No such part.' });
    await expect(first).rejects.toThrow('No such part.');
    const second = work('fit', jobOf(0.2));
    answerFit(hired[0]);
    expect((await second).stretch).toBe(0.2);
  });

  it('takes nothing for an answer that is none', async () => {
    const { hired, work } = openPool(1);
    const report = work('fit', jobOf(0.1));
    for (const data of [null, 'done', 7, {}, { id: 99, ok: true }, { id: 'x', ok: true }]) {
      hired[0]?.say(data);
    }
    answerFit(hired[0]);
    expect((await report).stretch).toBe(0.1);
  });

  it('rejects all that waits where no worker can be made, and tries again', async () => {
    const { hired, make } = workshop();
    let fails = true;
    const work = createEnginePool(() => {
      if (fails) throw new Error('forbidden');
      return make();
    }, 2);
    const all = await Promise.allSettled([0.1, 0.2, 0.3].map((share) => work('fit', jobOf(share))));
    expect(all.map(({ status }) => status)).toEqual(['rejected', 'rejected', 'rejected']);
    fails = false;
    const last = work('fit', jobOf(0.2));
    answerFit(hired[0]);
    expect((await last).stretch).toBe(0.2);
  });

  it('does a job again whose worker died in silence, with more patience each time', async () => {
    const clock = fakeClock();
    const { hired, work } = openPool(1, clock.every);
    const first = work('fit', jobOf(0.1));
    const looks: number[] = [];
    for (const workers of [2, 3]) looks.push(clock.lookUntil(() => hired.length === workers));
    expect(hired[0]?.isTerminated()).toBe(true);
    expect(looks[0]).toBeGreaterThan(3);
    expect(looks[1]).toBeGreaterThan(1.8 * (looks[0] ?? 0));
    answerFit(hired[2]);
    expect((await first).stretch).toBe(0.1);
    expect(clock.lookers()).toBe(0);
  });

  it('gives up on the third silence, says so, and goes on with the next job', async () => {
    const clock = fakeClock();
    const { hired, work } = openPool(1, clock.every);
    const first = work('fit', jobOf(0.1));
    const second = work('fit', jobOf(0.2));
    clock.lookUntil(() => hired.length === 4);
    await expectFirstGivenUp(hired, first, second);
  });

  it('takes none for dead that says now and then that it is still at it', async () => {
    const clock = fakeClock();
    const { hired, work } = openPool(1, clock.every);
    const slow = work('fit', jobOf(0.1));
    for (let count = 0; count < 1000; count++) {
      clock.look();
      if (count % 3 === 0) hired[0]?.say({ id: hired[0].asked[0]?.id, isAtIt: true });
    }
    expect(hired).toHaveLength(1);
    answerFit(hired[0]);
    expect((await slow).stretch).toBe(0.1);
  });

  it('does nothing again that is no longer wanted, but frees its worker', async () => {
    const clock = fakeClock();
    const { hired, work } = openPool(1, clock.every);
    const unwanted = new AbortController();
    const first = work('fit', jobOf(0.1), unwanted.signal);
    const second = work('fit', jobOf(0.2));
    unwanted.abort();
    await expect(first).rejects.toMatchObject({ name: 'AbortError' });
    clock.lookUntil(() => hired.length === 2);
    answerFit(hired[1]);
    expect((await second).stretch).toBe(0.2);
    expect(hired.map(sharesOf)).toEqual([[0.1], [0.2]]);
  });

  it('finds no worker here, where the platform has none', () => {
    expect('Worker' in globalThis).toBe(false);
    expect(findEngineWorker('engine.js')).toBeNull();
  });

  it.each([
    [undefined, 1],
    [1, 1],
    [2, 2],
    [8, 4],
  ])('of %s cores uses %i workers', (cores, workers) => {
    expect(workerCount(cores)).toBe(workers);
  });
});
