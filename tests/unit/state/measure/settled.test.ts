import { describe, expect, it } from 'vitest';
import type { FitJob, FitReport } from '../../../../src/engine/fit/fit-report';
import { inventedReport, LINE, lookAt, openMeasure } from './open-measure';

/** A visit that took a line down, and what the next one finds. */
async function visited() {
  const note: { text: string | null } = { text: null };
  const first = await openMeasure({ note });
  const id = first.shootLine();
  await first.rest();
  await first.measure.flush();
  return { id, note, kept: first.memory, told: first.measure.knowledge.value };
}

describe('what is known of the kit', () => {
  it('stands from the outset where nothing was read, whatever the kit', async () => {
    const { measure, kit, rest } = await openMeasure();
    expect(measure.isSettled.value).toBe(true);
    await rest();
    kit.choose('cues', 'demo-cue-stiff');
    measure.begin(LINE);
    expect(measure.isSettled.value).toBe(true);
  });

  it('does not stand from a reading until it is worked out', async () => {
    const { measure, rest, shootLine } = await openMeasure();
    const id = shootLine();
    expect(measure.isSettled.value).toBe(false);
    await rest();
    expect(measure.isSettled.value).toBe(true);
    measure.strikeOut(id, true);
    expect(measure.isSettled.value).toBe(false);
    await rest();
    expect(measure.isSettled.value).toBe(true);
  });

  it('does not stand of another kit until that is worked out', async () => {
    const { measure, kit, rest, shootLine } = await openMeasure();
    shootLine();
    await rest();
    kit.choose('cues', 'demo-cue-stiff');
    expect(measure.isSettled.value).toBe(false);
    await rest();
    expect(measure.isSettled.value).toBe(true);
  });

  it('stands where it cannot be worked out, until something else is asked', async () => {
    const without = await openMeasure({ fit: null });
    without.shootLine();
    expect(without.measure.isSettled.value).toBe(true);
    const failing = await openMeasure({
      fit: async (): Promise<FitReport> => {
        throw new Error('crashed');
      },
    });
    failing.shootLine();
    await failing.rest();
    expect(failing.measure.isSettled.value).toBe(true);
    failing.shootLine(0.09);
    expect(failing.measure.isSettled.value).toBe(false);
  });
});

describe('the next visit', () => {
  it('knows at once what the readings told, and works it out for whoever looks', async () => {
    const { note, kept, told } = await visited();
    const { measure, rest, jobs } = await openMeasure({ note, kept });
    expect(measure.isSettled.value).toBe(true);
    expect(measure.knowledge.value).toEqual(told);
    const atOnce = measure.knowledge.value;
    await rest();
    expect(jobs).toHaveLength(0);
    await lookAt(measure);
    await rest();
    expect(jobs).toHaveLength(1);
    expect(measure.isFresh.value).toBe(true);
    // The very same: whoever worked something out from it need not begin anew.
    expect(measure.knowledge.value).toBe(atOnce);
  });

  it('takes what another fit tells, though something was noted', async () => {
    const { note, kept } = await visited();
    const stiffer = async (job: FitJob): Promise<FitReport> => {
      const report = inventedReport(job);
      const kit = { ...report.knowledge.kit, massRatio: 9 };
      return { ...report, knowledge: { ...report.knowledge, kit } };
    };
    const { measure, rest } = await openMeasure({ note, kept, fit: stiffer });
    await lookAt(measure);
    await rest();
    expect(measure.knowledge.value.kit.massRatio).toBe(9);
  });

  it.each([
    ['nothing is noted', { text: null }, 'a build'],
    ['another build of the app noted it', {}, 'the next build'],
    ['it is no note of ours', { text: 'scribble' }, 'a build'],
    ['it is cut off', { cut: 40 }, 'a build'],
  ])(
    'does not stand where %s',
    async (_, { text, cut }: { text?: null | string; cut?: number }, build) => {
      const { note, kept } = await visited();
      if (text !== undefined) note.text = text;
      if (cut !== undefined) note.text = note.text?.slice(0, -cut) ?? null;
      const { measure, kit, rest } = await openMeasure({ note, kept, build });
      expect(measure.isSettled.value).toBe(false);
      expect(measure.knowledge.value.kit).toEqual(kit.kit.value);
      await rest();
      expect(measure.isSettled.value).toBe(true);
      expect(measure.knowledge.value.kit).not.toEqual(kit.kit.value);
    },
  );

  it('does not stand where the readings have changed meanwhile', async () => {
    const { id, note, kept } = await visited();
    const attempt = (await kept.loadAll()).attempts.find((one) => one.id === id);
    if (!attempt) throw new Error('it was kept');
    await kept.put('attempts', { ...attempt, readings: { landingM: 0.02 } });
    const { measure, kit } = await openMeasure({ note, kept });
    expect(measure.isSettled.value).toBe(false);
    expect(measure.knowledge.value.kit).toEqual(kit.kit.value);
  });

  it('finds nothing noted once no reading is left', async () => {
    const { id, note, kept } = await visited();
    const { measure, rest } = await openMeasure({ note, kept });
    measure.remove(id);
    expect(measure.isSettled.value).toBe(false);
    await rest();
    expect(note.text).toBeNull();
  });
});
