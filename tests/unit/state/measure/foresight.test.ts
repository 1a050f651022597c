import { describe, expect, it } from 'vitest';
import type { ForesightJob } from '../../../../src/engine/fit/foresee';
import type { ReadingReport } from '../../../../src/engine/fit/shot-report';
import { openMeasure } from './open-measure';

const READING: ReadingReport = { name: 'landingM', read: 0.1, expected: 0.05, sd: 0.01 };

/** Three lines taken down, and all that is asked of what was expected of them. */
async function threeLines() {
  const asked: ForesightJob[] = [];
  const opened = await openMeasure({
    async foresee(job) {
      asked.push(job);
      return [{ ...READING, expected: job.earlier.length }];
    },
  });
  const ids = [0.08, 0.09, 0.1].map((landingM) => opened.shootLine(landingM));
  return { ...opened, asked, ids };
}

describe('what was expected of an attempt before it was read', () => {
  it('is worked out from those before it alone, once the report is', async () => {
    const { measure, rest, asked, ids } = await threeLines();
    const [first, second = '', third] = ids;
    measure.foresee(second);
    expect(asked).toEqual([]);
    expect(measure.foreseen.value).toBeNull();
    await rest();
    expect(asked.map(({ shot }) => shot.id)).toEqual([second]);
    expect(asked[0]?.earlier.map(({ id }) => id)).toEqual([first]);
    expect(asked[0]?.shot.readings).toEqual({ landingM: 0.09 });
    expect(measure.foreseen.value).toEqual({ id: second, readings: [{ ...READING, expected: 1 }] });
    measure.foresee(third ?? '');
    await rest();
    expect(measure.foreseen.value).toMatchObject({ id: third, readings: [{ expected: 2 }] });
  });

  it('leaves out what is struck out', async () => {
    const { measure, rest, asked, ids } = await threeLines();
    const [first = '', second, third = ''] = ids;
    await rest();
    measure.foresee(third);
    measure.strikeOut(first, true);
    await rest();
    expect(asked.at(-1)?.earlier.map(({ id }) => id)).toEqual([second]);
  });

  it('is not told of one that does not count, nor where it cannot be worked out', async () => {
    const { measure, rest, ids } = await threeLines();
    measure.strikeOut(ids[1] ?? '', true);
    await rest();
    measure.foresee(ids[1] ?? '');
    await rest();
    expect(measure.foreseen.value).toBeNull();
    const without = await openMeasure();
    const id = without.shootLine();
    without.measure.foresee(id);
    await without.rest();
    expect(without.measure.foreseen.value).toBeNull();
    const failing = await openMeasure({
      foresee: async () => {
        throw new Error('crashed');
      },
    });
    failing.measure.foresee(failing.shootLine());
    await failing.rest();
    expect(failing.measure.foreseen.value).toBeNull();
    expect(failing.measure.problem.value).toBeNull();
  });
});
