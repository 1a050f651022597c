import { describe, expect, it } from 'vitest';
import { UNMEASURED } from '../../../../src/engine/kit/kit-spread';
import type { RankedWay } from '../../../../src/engine/plan/ranked-way';
import { askedForMost, differenceFor } from '../../../../src/state/choose/for-most';
import { ANYBODY } from '../../../../src/state/player/rough-stroke';
import type { Work } from '../../../../src/worker/engine-pool';
import type { OptionJob } from '../../../../src/worker/engine-work';
import { askPosition } from '../../../harness/invented-positions';
import { CUT } from './open-choose';

const { ball } = CUT.goal;
const { asked } = askPosition(CUT.balls, { ...CUT.goal, ball: ball ?? 0, pocket: 'far-right' });
const forMost = askedForMost(asked, UNMEASURED);

/** Ways that go so often for whoever plays. */
const ways = (...chances: readonly number[]) =>
  chances.map(
    (chance, place) =>
      ({ option: { place }, chance, goodPosition: null, clean: 1 }) as unknown as RankedWay,
  );

/** How often they go for most, by place. */
const most =
  (...chances: readonly number[]): Work =>
  async (_name, job) => {
    const { option, asked } = job as unknown as OptionJob;
    expect(asked).toBe(forMost);
    const [way] = ways(chances[option.place] ?? 0);
    return way as never;
  };

const differs = (mine: readonly number[], theirs: readonly number[]) =>
  differenceFor(forMost, ways(...mine), most(...theirs), new AbortController().signal);

describe('where ways differ for whoever plays', () => {
  it('is told of the two of the first three that differ least as they do for most', async () => {
    const found = await differs([0.5, 0.41, 0.39, 0.1], [0.6, 0.58, 0.5, 0.9]);
    expect(found?.better.option.place).toBe(0);
    expect(found?.other.option.place).toBe(1);
    expect(found?.forPlayer).toBeCloseTo(0.09, 12);
    expect(found?.forMost).toBeCloseTo(0.02, 12);
  });

  it('is told where for most it is the other way round', async () => {
    const found = await differs([0.5, 0.45], [0.5, 0.6]);
    expect(found?.forPlayer).toBeCloseTo(0.05, 12);
    expect(found?.forMost).toBeCloseTo(-0.1, 12);
  });

  it('is not told where it is as for most, or too little to choose by', async () => {
    expect(await differs([0.5, 0.3], [0.6, 0.41])).toBeNull();
    expect(await differs([0.5, 0.48], [0.6, 0.3])).toBeNull();
    expect(await differs([0.5], [0.9])).toBeNull();
    expect(await differs([], [])).toBeNull();
  });

  it('asks of most the same, with somebody in the middle who knows the kit no better', () => {
    expect(forMost).toEqual({
      ...asked,
      question: { ...asked.question, profile: ANYBODY, spread: UNMEASURED },
    });
  });
});
