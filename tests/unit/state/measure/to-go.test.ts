import { describe, expect, it } from 'vitest';
import { tellingsOf } from '../../../../src/state/kit-telling';
import { inventedReport, lookAt, openMeasure } from './open-measure';

describe('how many shots are still to do', () => {
  it('is told of the shot it was worked out for, and of no other', async () => {
    const opened = await openMeasure({ fit: async (job) => ({ ...inventedReport(job), toGo: 3 }) });
    const { measure, desk, rest, lastJob } = opened;
    await lookAt(measure);
    await rest();
    await expect.poll(() => measure.toGo.value).toBe(3);
    expect(lastJob().goal?.shot).toEqual(desk.shot.peek());
    const shot = desk.shot.peek();
    desk.setShot({ ...shot, distanceM: shot.distanceM + 0.2 });
    expect(measure.toGo.value).toBeUndefined();
    desk.setShot(shot);
    expect(measure.toGo.value).toBe(3);
  });
});

describe('what is told of a cue', () => {
  it('is what was measured of it while it is in play, and its own numbers before', async () => {
    const opened = await openMeasure();
    const { measure, kit, rest, shootLine } = opened;
    const squirtM = () => tellingsOf(opened, 'cues', kit.current.cues.value).squirt?.value ?? 0;
    // 2.54 m · (5/2) β √(1−β²) / (1 + m/m_e + (5/2)(1−β²)), half a 13 mm tip against 28.575 + 9.5 mm.
    const formula = (massRatio: number) => {
      const side = 6.5 / 38.075;
      const depth2 = 1 - side * side;
      return (2.54 * 2.5 * side * Math.sqrt(depth2)) / (1 + massRatio + 2.5 * depth2);
    };
    expect(squirtM()).toBeCloseTo(formula(22), 9);
    await lookAt(measure);
    shootLine();
    await rest();
    await expect.poll(() => measure.measured.value).toContain('cues');
    expect(squirtM()).toBeCloseTo(formula(measure.knowledge.value.kit.massRatio), 9);
    expect(squirtM()).toBeLessThan(formula(22));
  });
});
