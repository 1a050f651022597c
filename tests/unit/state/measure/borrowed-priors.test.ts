import { describe, expect, it } from 'vitest';
import { UNMEASURED } from '../../../../src/engine/kit/kit-spread';
import { openMeasure } from './open-measure';

const CUE = 'demo-cue-house';
const CLOTH = 'demo-cloth-club';

/** After one reading of the invented fit, and half of what is not known of any on top. */
const ALIKE = Math.hypot(UNMEASURED.massRatio / 2, UNMEASURED.massRatio / 2);

describe('a record that was changed', () => {
  it('parts what was read before from after', async () => {
    const { measure, kit, rest, lastJob, shootLine } = await openMeasure();
    const early = shootLine();
    kit.markChange('cloths', CLOTH, 'new cloth');
    const late = shootLine();
    await rest();
    const parts = lastJob().shots.map(({ id, prior }) => [id, prior.parts.cloth]);
    expect(parts).toEqual([
      [early, `${CLOTH}#0`],
      [late, `${CLOTH}#1`],
    ]);
    expect(lastJob().prior.parts.cloth).toBe(`${CLOTH}#1`);
    expect(measure.attempts.value.map(({ attempt }) => attempt.id)).toEqual([late, early]);
    kit.unmarkChange('cloths', CLOTH);
    await rest();
    expect(new Set(lastJob().shots.map(({ prior }) => prior.parts.cloth)).size).toBe(1);
  });

  it('starts from what was measured of it before, as like it and not the same', async () => {
    const { measure, kit, rest, shootLine } = await openMeasure();
    shootLine();
    kit.markChange('cues', CUE, 'new tip');
    await rest();
    const own = kit.kit.value.massRatio;
    expect(measure.before.value.kit.massRatio).toBeCloseTo(1.1 * own, 12);
    expect(measure.before.value.spread.massRatio).toBeCloseTo(ALIKE, 12);
    // What the cue has nothing to do with is no surer for it.
    expect(measure.before.value.spread.slideFriction).toBe(UNMEASURED.slideFriction);
  });

  it('starts from its own numbers where nothing was ever read on it', async () => {
    const { measure, kit, rest } = await openMeasure();
    kit.markChange('cues', CUE, 'new tip');
    kit.markChange('cues', CUE, 'new ferrule');
    await rest();
    expect(measure.before.value).toMatchObject({ kit: kit.kit.value, spread: UNMEASURED });
  });

  it('looks past an era without readings to the one before', async () => {
    const { measure, kit, rest, shootLine } = await openMeasure();
    shootLine();
    kit.markChange('cues', CUE, 'new tip');
    kit.markChange('cues', CUE, 'new ferrule');
    await rest();
    expect(measure.before.value.kit.massRatio).toBeCloseTo(1.1 * kit.kit.value.massRatio, 12);
    const wider = Math.hypot(ALIKE, UNMEASURED.massRatio / 2);
    expect(measure.before.value.spread.massRatio).toBeCloseTo(wider, 12);
  });
});

describe('a record that is like another', () => {
  it('starts from what was measured of that one, and counts it against its own balls', async () => {
    const { measure, kit, rest, shootLine } = await openMeasure();
    shootLine();
    const copied = kit.copy('cues', CUE);
    const id = copied.ok ? copied.id : '';
    kit.choose('cues', id);
    kit.choose('balls', 'demo-balls-heavy-cue-ball');
    await rest();
    // The heavy cue ball weighs 1.06 of an ordinary one in the invented catalogue.
    const cueAlone = kit.current.cues.value.massRatio;
    expect(measure.before.value.kit.massRatio).toBeCloseTo(1.1 * cueAlone * 1.06, 12);
    kit.setLike('cues', id, null);
    await rest();
    expect(measure.before.value.kit.massRatio).toBeCloseTo(cueAlone * 1.06, 12);
    expect(measure.before.value.spread.massRatio).toBe(UNMEASURED.massRatio);
  });

  it('borrows from each but once where records are like one another in a ring', async () => {
    const { measure, kit, rest, shootLine } = await openMeasure();
    const house = kit.current.cues.value.massRatio;
    kit.setLike('cues', CUE, 'demo-cue-stiff');
    kit.setLike('cues', 'demo-cue-stiff', 'demo-cue-low');
    kit.setLike('cues', 'demo-cue-low', CUE);
    await rest();
    expect(measure.before.value.spread.massRatio).toBe(UNMEASURED.massRatio);
    shootLine();
    kit.choose('cues', 'demo-cue-low');
    await rest();
    expect(measure.isFresh.value).toBe(true);
    expect(measure.before.value.spread.massRatio).toBeCloseTo(ALIKE, 12);
    expect(measure.before.value.kit.massRatio).toBeCloseTo(1.1 * house, 12);
  });

  it('starts from its own numbers where the other is gone', async () => {
    const { measure, kit, rest, shootLine } = await openMeasure();
    shootLine();
    kit.setLike('cues', 'demo-cue-stiff', CUE);
    kit.choose('cues', 'demo-cue-stiff');
    kit.remove('cues', CUE);
    await rest();
    expect(measure.before.value).toMatchObject({ kit: { massRatio: 12 }, spread: UNMEASURED });
  });

  it('has what it starts from worked out once, however often it is asked for', async () => {
    const { measure, kit, jobs, rest, shootLine } = await openMeasure();
    shootLine();
    kit.markChange('cues', CUE, 'new tip');
    await rest();
    const before = jobs.length;
    shootLine();
    await rest();
    expect(measure.report.value?.shots).toHaveLength(2);
    expect(jobs.length - before).toBe(1);
  });
});
