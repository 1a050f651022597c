import { describe, expect, it } from 'vitest';
import { type FitJob, fitReport, type ToGo } from '../../../../src/engine/fit/fit-report';
import { INVENTED_PROFILES } from '../../../../src/engine/room/stroke-profile';
import { tellingsOf } from '../../../../src/state/kit-telling';
import { DEFAULT_DESK } from '../../../../src/store/default-desk';
import { shotOf } from '../../ui/measure/invented-trials';
import { inventedReport, LINE, lookAt, openMeasure } from './open-measure';

const fitWith = (toGo: ToGo) => async (job: FitJob) => ({ ...inventedReport(job), toGo });

/** Far, and with side: not sure enough before anything is read. */
const FAR = { ...DEFAULT_DESK.shot, distanceM: 2, side: 0.45 };

describe('how many shots are still to do', () => {
  it('is told of the shot it was worked out for, and of no other', async () => {
    const opened = await openMeasure({ fit: fitWith({ shots: 3, first: null }) });
    const { measure, desk, rest, lastJob } = opened;
    desk.setShot(FAR);
    await lookAt(measure);
    await rest();
    await expect.poll(() => measure.toGo.value?.shots).toBe(3);
    expect(lastJob().goal?.shot).toEqual(desk.shot.peek());
    const shot = desk.shot.peek();
    desk.setShot({ ...shot, distanceM: shot.distanceM + 0.2 });
    expect(measure.toGo.value).toBeNull();
    desk.setShot(shot);
    expect(measure.toGo.value?.shots).toBe(3);
  });

  it('is at least one as long as what Shot shows is not sure enough', async () => {
    const opened = await openMeasure({ fit: fitWith({ shots: 0, first: null }) });
    const { measure, desk, rest } = opened;
    desk.setShot(FAR);
    await lookAt(measure);
    await rest();
    await expect.poll(() => measure.toGo.value?.shots).toBe(1);
    expect(measure.aimGain(measure.before.value)?.isEnough).toBe(false);
  });

  it('has the shot that serves it offered first, until it is reached', async () => {
    const serves = { shot: shotOf('stop'), teaches: 'slideFriction' } as const;
    const opened = await openMeasure({ fit: fitWith({ shots: 2, first: serves }) });
    const { measure, desk, rest } = opened;
    desk.setShot(FAR);
    await lookAt(measure);
    await rest();
    await expect.poll(() => measure.offers.value[0]?.shot).toEqual(serves.shot);
    // Without side, and near: sure enough as it is.
    desk.setShot({ ...FAR, distanceM: 0.2, side: 0 });
    opened.profile.value = INVENTED_PROFILES.steady;
    await rest();
    await expect.poll(() => measure.toGo.value?.shots).toBe(0);
    expect(measure.offers.value[0]?.trial).not.toBe('stop');
  });

  it('is told of no shot that cannot be aimed', async () => {
    const opened = await openMeasure({ fit: async (job) => fitReport(job) });
    const { measure, desk, rest } = opened;
    await lookAt(measure);
    await rest();
    await expect.poll(() => measure.toGo.value).not.toBeNull();
    desk.setShot({ ...desk.shot.peek(), cutRad: 1.56, side: 0.5, speedMps: 6 });
    opened.profile.value = INVENTED_PROFILES.steady;
    await rest();
    await expect.poll(() => measure.isFresh.value).toBe(true);
    expect(measure.toGo.value).toBeNull();
  }, 60_000);
});

describe('the shots to go, counted by the engine’s own fit', () => {
  it('grow fewer with every shot that is played as offered and read as expected', async () => {
    const opened = await openMeasure({ fit: async (job) => fitReport(job) });
    const { measure, desk, rest } = opened;
    desk.setShot({ ...desk.shot.peek(), distanceM: 0.9144, cutRad: Math.PI / 6, side: 0.25 });
    await lookAt(measure);
    const counts: (number | null)[] = [];
    for (let played = 0; played < 6 && counts.at(-1) !== 0; played++) {
      await rest();
      await expect.poll(() => measure.isFresh.value, { timeout: 60_000 }).toBe(true);
      const toGo = measure.toGo.value;
      counts.push(toGo?.shots ?? null);
      const [best] = measure.offers.value;
      if (toGo?.shots !== 0) expect(best?.shot).toEqual(toGo?.first?.shot);
      const expected = measure.report.value?.lessons.find(({ shot }) => shot === best?.shot);
      const id = measure.begin(best?.shot ?? LINE);
      measure.finishStep(id);
      measure.finishStep(id);
      measure.enter(id, expected?.expected.landingM ?? Number.NaN);
    }
    expect(counts.length).toBeGreaterThan(2);
    expect(counts.at(-1)).toBe(0);
    for (const [at, count] of counts.slice(1).entries()) {
      expect(count).toBeLessThan(counts[at] ?? 0);
    }
  }, 240_000);
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
