import { describe, expect, it } from 'vitest';
import { createEnginePool } from '../../../src/worker/engine-pool';
import { createFitClient } from '../../../src/worker/fit-client';
import { workshop } from './fake-worker';
import { answerFit, expectFirstGivenUp, jobOf } from './invented-jobs';

function openClient() {
  const { hired, make } = workshop();
  return { hired, workOut: createFitClient(createEnginePool(make, 1)) };
}

describe('the client that fits readings', () => {
  it('starts no worker before there is a job, and keeps the one it has', async () => {
    const { hired, workOut } = openClient();
    expect(hired).toHaveLength(0);
    for (const share of [0.1, 0.2]) {
      const report = workOut(jobOf(share));
      answerFit(hired[0]);
      expect((await report).stretch).toBe(share);
    }
    expect(hired).toHaveLength(1);
  });

  it('works out one job at a time, and of those that wait only the last', async () => {
    const { hired, workOut } = openClient();
    const first = workOut(jobOf(0.1));
    const second = workOut(jobOf(0.2));
    const third = workOut(jobOf(0.3));
    await expect(second).rejects.toThrow('newer');
    expect(hired[0]?.asked).toHaveLength(1);
    answerFit(hired[0]);
    expect((await first).stretch).toBe(0.1);
    answerFit(hired[0]);
    expect((await third).stretch).toBe(0.3);
    expect(hired[0]?.asked).toHaveLength(2);
  });

  it('goes on with the one that waits where another could not be worked out', async () => {
    const { hired, workOut } = openClient();
    const first = workOut(jobOf(0.1));
    const second = workOut(jobOf(0.2));
    for (let worker = 0; worker < 3; worker++) hired[worker]?.fail('error');
    await expectFirstGivenUp(hired, first, second);
  });
});
