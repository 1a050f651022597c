import { describe, expect, it } from 'vitest';
import type { FitQuantity } from '../../../../src/engine/fit/fit-question';
import type { FitReport } from '../../../../src/engine/fit/fit-report';
import type { TrialName } from '../../../../src/engine/fit/trials/trials';
import { reportOn } from '../../../harness/trial-player';

describe('the lessons of shots not yet played', () => {
  const { lessons }: FitReport = reportOn([]);
  const best = (trial: TrialName) => lessons.find(({ shot }) => shot.trial === trial);

  it('come best first, and every worth is a figure', () => {
    expect(lessons.length).toBeGreaterThan(10);
    lessons.forEach(({ worth }, at) => {
      expect(worth).toBeGreaterThan(0);
      expect(worth).toBeLessThanOrEqual(lessons[at - 1]?.worth ?? Number.POSITIVE_INFINITY);
    });
  });

  // Common practice, no source: what each is done for.
  it.each<[TrialName, FitQuantity]>([
    ['line', 'massRatio'],
    ['curve', 'massRatio'],
  ])('%s teaches %s most', (trial, quantity) => {
    expect(best(trial)?.teaches).toBe(quantity);
  });

  it('are worth as much to the left as to the right', () => {
    const lines = lessons.filter(({ shot }) => shot.trial === 'line').map(({ worth }) => worth);
    expect(lines).toHaveLength(2);
    // Not quite: the player's usual shots lean to one side, and so does what a tilted bed does to them.
    expect(Math.abs(Math.log((lines[0] ?? 0) / (lines[1] ?? 0)))).toBeLessThan(0.02);
  });

  it('leave out shots whose object ball would come to the cushion', () => {
    for (const { shot, expected } of lessons) {
      if (shot.trial !== 'stop') continue;
      expect(expected.objectBallM).toBeLessThan(shot.setup.distanceM);
    }
  });

  it('leave less to learn, the more was learnt', () => {
    const { aimSdRad } = reportOn([]);
    expect(aimSdRad?.before).toBeGreaterThan(0);
    expect(aimSdRad?.after).toBeCloseTo(aimSdRad?.before ?? Number.NaN, 12);
  });
});
