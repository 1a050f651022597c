import { describe, expect, it } from 'vitest';
import { slopeSeenAlong } from '../../../../src/engine/kit/kit-along';
import { between, seededRandom } from '../../../harness/seeded-random';

const AWAY = { alongM_per_M: 0.001, rightM_per_M: 0 };

describe('a slope seen along another direction', () => {
  it('that falls away falls to the left of one who turns right', () => {
    const seen = slopeSeenAlong(AWAY, Math.PI / 2);
    expect(seen.alongM_per_M).toBeCloseTo(0, 15);
    expect(seen.rightM_per_M).toBeCloseTo(-0.001, 15);
  });

  it('that falls to the right falls away from one who turns right', () => {
    const seen = slopeSeenAlong({ alongM_per_M: 0, rightM_per_M: 0.001 }, Math.PI / 2);
    expect(seen.alongM_per_M).toBeCloseTo(0.001, 15);
    expect(seen.rightM_per_M).toBeCloseTo(0, 15);
  });

  it('comes towards one who stands at the other end', () => {
    const seen = slopeSeenAlong({ alongM_per_M: 0.001, rightM_per_M: 0.002 }, Math.PI);
    expect(seen.alongM_per_M).toBeCloseTo(-0.001, 15);
    expect(seen.rightM_per_M).toBeCloseTo(-0.002, 15);
  });

  it('is as steep as ever, and the same again once turned back', () => {
    const random = seededRandom(33);
    for (let count = 0; count < 100; count++) {
      const slope = {
        alongM_per_M: between(random, -0.01, 0.01),
        rightM_per_M: between(random, -0.01, 0.01),
      };
      const turn = between(random, -7, 7);
      const seen = slopeSeenAlong(slope, turn);
      expect(Math.hypot(seen.alongM_per_M, seen.rightM_per_M)).toBeCloseTo(
        Math.hypot(slope.alongM_per_M, slope.rightM_per_M),
        15,
      );
      const back = slopeSeenAlong(seen, -turn);
      expect(back.alongM_per_M).toBeCloseTo(slope.alongM_per_M, 15);
      expect(back.rightM_per_M).toBeCloseTo(slope.rightM_per_M, 15);
    }
  });
});
