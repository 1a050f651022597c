import { describe, expect, it } from 'vitest';
import { type FitReport, fitReport } from '../../../../src/engine/fit/fit-report';
import { TRIAL_NAMES } from '../../../../src/engine/fit/trials/trials';
import { UNMEASURED } from '../../../../src/engine/kit/kit-spread';
import { INVENTED_PROFILES } from '../../../../src/engine/room/stroke-profile';
import { CURVE, inventedReport, LINE, lookAt, openMeasure } from './open-measure';

const CUE = 'demo-cue-house';

describe('the report', () => {
  it('is worked out at rest, from the finished attempts that are not struck out', async () => {
    const { measure, rest, lastJob, shootLine } = await openMeasure();
    const id = shootLine(0.08);
    measure.begin(LINE);
    expect(measure.report.value).toBeNull();
    expect(measure.isFresh.value).toBe(false);
    await rest();
    expect(lastJob().shots).toMatchObject([{ id, readings: { landingM: 0.08 } }]);
    expect(measure.report.value?.shots.map((shot) => shot.id)).toEqual([id]);
    expect(measure.isFresh.value).toBe(true);
    measure.strikeOut(id, true);
    expect(measure.isFresh.value).toBe(false);
    await rest();
    expect(lastJob().shots).toEqual([]);
    measure.strikeOut(id, false);
    await rest();
    expect(measure.report.value?.shots).toHaveLength(1);
  });

  it('is not asked for again by what tells nothing', async () => {
    const { measure, kit, rest, shootLine } = await openMeasure();
    shootLine();
    await rest();
    const id = measure.begin(LINE);
    measure.finishStep(id);
    measure.type(id, '1');
    kit.rename('cues', CUE, 'My cue');
    expect(measure.isFresh.value).toBe(true);
    expect(await rest()).toBe(0);
  });

  it('takes the strokes to stray as the player’s do, and serves the shots that are played', async () => {
    const { desk, profile, rest, lastJob, shootLine } = await openMeasure();
    shootLine();
    profile.value = INVENTED_PROFILES.steady;
    await rest();
    const { directionRad, tipM, speedShare } = INVENTED_PROFILES.steady;
    expect(lastJob().scatter).toMatchObject({ directionRad, tipM, speedShare });
    expect(lastJob().aims).toEqual([desk.shot.value]);
    const other = { ...desk.shot.value, distanceM: 0.5 };
    desk.noteShot(other);
    profile.value = INVENTED_PROFILES.club;
    await rest();
    const { headingRad: _laid, ...aim } = other;
    expect(lastJob().aims).toEqual([aim]);
  });

  it('takes the elevation that was measured, with no less than half a degree of doubt', async () => {
    const { measure, profile, rest, lastJob } = await openMeasure();
    profile.value = INVENTED_PROFILES.steady;
    const id = measure.begin(CURVE);
    measure.finishStep(id);
    measure.enter(id, 0.4);
    measure.enter(id, 1.2);
    measure.enter(id, 0.05);
    await rest();
    const [shot] = lastJob().shots;
    // sin θ = (0.4 − R) / (R + L), with the ball of 2¼ in (WPA) and a cue of 1.47 m.
    const elevationRad = Math.asin((0.4 - 0.028575) / (1.47 + 0.028575));
    expect(shot?.shot.stroke.elevationRad).toBeCloseTo(elevationRad, 2);
    expect(shot?.shot.stroke.elevationRad).not.toBe(CURVE.stroke.elevationRad);
    expect(shot?.scatter.elevationRad).toBeCloseTo((0.5 * Math.PI) / 180, 12);
  });

  it('leaves out what shares nothing with the kit in play, and what was played with things now gone', async () => {
    const { measure, kit, rest, lastJob, shootLine } = await openMeasure();
    const id = shootLine();
    const copied = kit.copy('cues', CUE);
    kit.choose('cues', copied.ok ? copied.id : '');
    const other = shootLine();
    await rest();
    // The same cloth, balls and table: both tell of those.
    expect(lastJob().shots.map((shot) => shot.id)).toEqual([id, other]);
    kit.choose('cloths', 'demo-cloth-worn');
    kit.choose('balls', 'demo-balls-dirty');
    kit.choose('tables', 'demo-table-8ft');
    await rest();
    expect(lastJob().shots.map((shot) => shot.id)).toEqual([other]);
    kit.remove('cues', copied.ok ? copied.id : '');
    await rest();
    expect(lastJob().shots).toEqual([]);
    expect(measure.attempts.value).toEqual([]);
    expect(measure.progress(other)?.attempt.id).toBe(other);
  });

  it('of an older question is not used', async () => {
    const answers: (() => void)[] = [];
    const { measure, rest, shootLine } = await openMeasure({
      fit: (job) =>
        new Promise<FitReport>((resolve) => answers.push(() => resolve(inventedReport(job)))),
    });
    shootLine();
    await rest();
    shootLine(0.09);
    await rest();
    expect(answers).toHaveLength(2);
    answers[1]?.();
    await rest();
    expect(measure.report.value?.shots).toHaveLength(2);
    answers[0]?.();
    await rest();
    expect(measure.report.value?.shots).toHaveLength(2);
    expect(measure.isFresh.value).toBe(true);
  });

  it('is kindly said to be missing where the browser cannot work it out, and readings are kept', async () => {
    const { measure, memory, rest, shootLine } = await openMeasure({ fit: null });
    shootLine();
    await rest();
    expect(measure.problem.value).toMatch(/cannot work beside the page/);
    expect(measure.report.value).toBeNull();
    expect(measure.knowledge.value).toEqual(measure.before.value);
    await measure.flush();
    expect((await memory.loadAll()).attempts).toHaveLength(1);
    measure.dispose();
  });

  it('that fails is told, and forgotten once one does not', async () => {
    let fails = true;
    const { measure, rest, shootLine } = await openMeasure({
      fit: async (job) => {
        if (fails) throw new Error('crashed');
        return inventedReport(job);
      },
    });
    await lookAt(measure);
    await rest();
    expect(measure.problem.value).toMatch(/could not be worked out/);
    expect(measure.isFresh.value).toBe(false);
    fails = false;
    shootLine();
    await rest();
    expect(measure.problem.value).toBeNull();
    expect(measure.isFresh.value).toBe(true);
  });
});

describe('what is known of the kit in play', () => {
  it('is what was assumed until something is read, then what the report tells', async () => {
    const { measure, kit, rest, shootLine } = await openMeasure();
    const own = kit.kit.value;
    expect(measure.knowledge.value).toMatchObject({ kit: own, spread: UNMEASURED });
    expect(measure.lastReadAtMs.value).toBeNull();
    const id = shootLine();
    await rest();
    expect(measure.before.value).toMatchObject({ kit: own, spread: UNMEASURED });
    // The invented fit makes it a tenth larger, and twice as sure.
    expect(measure.knowledge.value.kit.massRatio).toBeCloseTo(1.1 * own.massRatio, 12);
    expect(measure.knowledge.value.spread.massRatio).toBeCloseTo(UNMEASURED.massRatio / 2, 12);
    expect(measure.lastReadAtMs.value).toBe(measure.progress(id)?.attempt.startedAtMs);
  });

  it('is never that of another kit, nor of other numbers; sizes are always those of the records', async () => {
    const { measure, kit, rest, shootLine } = await openMeasure();
    shootLine();
    await rest();
    kit.edit('cues', CUE, 'tipRadiusM', 0.012);
    expect(measure.knowledge.value.kit.tipRadiusM).toBe(0.012);
    expect(measure.knowledge.value.spread.massRatio).toBeLessThan(UNMEASURED.massRatio);
    kit.edit('cues', CUE, 'massRatio', 30);
    expect(measure.knowledge.value).toMatchObject({ kit: { massRatio: 30 }, spread: UNMEASURED });
    await rest();
    expect(measure.knowledge.value.kit.massRatio).toBeCloseTo(33, 12);
    kit.choose('cues', 'demo-cue-stiff');
    expect(measure.knowledge.value.kit.massRatio).toBe(12);
  });

  it('follows the readings by the engine’s own fit', async () => {
    const { measure, rest, shootLine } = await openMeasure({
      fit: async (job) => fitReport(job),
    });
    // Squirt against the side played: a stiff cue throws a right-hand hit far to the left.
    for (const landingM of [-0.09, -0.1, -0.095]) shootLine(landingM);
    await rest();
    const { before, knowledge, offers } = measure;
    expect(knowledge.value.kit.massRatio).toBeLessThan(before.value.kit.massRatio);
    expect(knowledge.value.spread.massRatio).toBeLessThan(0.9 * before.value.spread.massRatio);
    expect(offers.value.map(({ trial }) => trial).sort()).toEqual([...TRIAL_NAMES].sort());
    expect(offers.value.find(({ trial }) => trial === 'line')?.done).toBe(3);
  }, 60_000);
});
