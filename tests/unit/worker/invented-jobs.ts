import { expect } from 'vitest';
import type { FitJob, FitReport } from '../../../src/engine/fit/fit-report';
import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import { UNMEASURED } from '../../../src/engine/kit/kit-spread';
import { inventedReport } from '../state/measure/open-measure';
import { answer, type FakeWorker } from './fake-worker';

/** A job that is told from others by the stretch of its answer. */
export function jobOf(speedShare: number): FitJob {
  const parts = { cue: 'c', cloth: 'd', balls: 'b', table: 't' };
  return {
    shots: [],
    prior: { parts, kit: DEFAULT_KIT, spread: UNMEASURED },
    scatter: { directionRad: 0.01, tipM: 0.001, elevationRad: 0.01, speedShare },
    aims: [],
    candidates: [],
  };
}

export function work(job: FitJob): FitReport {
  if (job.scatter.speedShare > 1) throw new RangeError('More than all of the speed.');
  return { ...inventedReport(job), stretch: job.scatter.speedShare };
}

/** Answers the last job a worker was asked to fit. */
export function answerFit(worker: FakeWorker | undefined): void {
  answer(worker, (job) => work(job as FitJob));
}

/** Sees the first of two jobs given up after three workers, and a fourth do the second, of 0.2. */
export async function expectFirstGivenUp(
  hired: readonly FakeWorker[],
  first: Promise<FitReport>,
  second: Promise<FitReport>,
): Promise<void> {
  await expect(first).rejects.toThrow('try again');
  answerFit(hired[3]);
  expect((await second).stretch).toBe(0.2);
}
