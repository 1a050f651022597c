import { describe, expect, it } from 'vitest';
import type { MissOrLost } from '../../../../src/engine/goal/task';
import { shareAlong } from '../../../../src/engine/room/share-along';

/** Share of the normal law by plain summing, for comparison. */
function summed(missAlong: (sds: number) => MissOrLost): number {
  const step = 1e-3;
  let share = 0;
  for (let sds = -6; sds < 6; sds += step) {
    const miss = missAlong(sds + step / 2);
    const density = Math.exp(-((sds + step / 2) ** 2) / 2) / Math.sqrt(2 * Math.PI);
    if (typeof miss === 'number' && Math.abs(miss) <= 1) share += density * step;
  }
  return share;
}

const SLOPE = -2.5;

describe('the share along the direction’s scatter', () => {
  it.each<[string, (sds: number) => MissOrLost]>([
    ['a straight miss', (sds) => SLOPE * sds],
    ['a straight miss that is off to one side', (sds) => SLOPE * sds + 1.7],
    ['a bent miss', (sds) => SLOPE * sds + 0.4 * sds * sds],
    ['a miss that steepens towards a graze', (sds) => -3 * Math.asin(Math.min(1, sds / 2))],
    ['a ball that is lost on the thin side', (sds) => (sds < -0.2 ? 'untouched' : SLOPE * sds)],
    ['a ball that stops short there', (sds) => (sds < 0.1 ? 'short' : SLOPE * sds)],
    ['a ball that only a fuller hit brings there', (sds) => (sds < 0.7 ? 'short' : -0.9 * sds)],
  ])('agrees with plain summing for %s', (_name, missAlong) => {
    expect(Math.abs(shareAlong(missAlong, SLOPE) - summed(missAlong))).toBeLessThan(0.02);
  });

  it('is all or nothing where direction makes no difference', () => {
    expect(shareAlong(() => 0.3, 0)).toBe(1);
    expect(shareAlong(() => 1.3, 0)).toBe(0);
  });

  it('is nothing for a miscue, and for a ball nowhere near', () => {
    expect(shareAlong(() => 'miscue', SLOPE)).toBe(0);
    expect(shareAlong(() => 'untouched', SLOPE)).toBe(0);
  });
});
