import { describe, expect, it } from 'vitest';
import { layOutSureness, residualDot, USUAL_BAND } from '../../../src/diagram/trial-bars';

describe('the bars of what is known', () => {
  it('are as long as their standard deviations', () => {
    const { before, now } = layOutSureness({ value: 2.5, sd: 0.8 }, { value: 2, sd: 0.2 });
    expect((before.to - before.from) / (now.to - now.from)).toBeCloseTo(4, 9);
  });

  it('stay on their track, however far the measured lies from the assumed', () => {
    const { before, now } = layOutSureness({ value: 2.5, sd: 0.1 }, { value: 9, sd: 0.3 });
    expect(before.from).toBeGreaterThan(0);
    expect(now.to).toBeLessThan(1);
    expect(now.at).toBeGreaterThan(before.to);
  });

  it('lie in the middle where nothing is left open', () => {
    const { before } = layOutSureness({ value: 1, sd: 0 }, { value: 1, sd: 0 });
    expect(before).toEqual({ from: 0.5, at: 0.5, to: 0.5 });
  });
});

describe('a reading’s dot', () => {
  it('is in the middle where the reading is as expected, and on the band’s edge at two deviations', () => {
    expect(residualDot(0.1, 0.1, 0.02)?.at).toBeCloseTo(0.5, 12);
    expect(residualDot(0.14, 0.1, 0.02)?.at).toBeCloseTo(USUAL_BAND.to, 12);
    expect(residualDot(0.06, 0.1, 0.02)?.at).toBeCloseTo(USUAL_BAND.from, 12);
  });

  it('stays at the end of its track and says so where it lies beyond', () => {
    expect(residualDot(1, 0, 0.1)).toEqual({
      deviations: expect.closeTo(10, 9),
      at: 1,
      isBeyond: true,
    });
  });

  it('is none where nothing was expected or the deviation is nothing', () => {
    expect(residualDot(1, null, 0.1)).toBeNull();
    expect(residualDot(1, 1, 0)).toBeNull();
  });
});
