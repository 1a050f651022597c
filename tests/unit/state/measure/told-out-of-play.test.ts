import { describe, expect, it } from 'vitest';
import { fitReport } from '../../../../src/engine/fit/fit-report';
import { tellingsOf, toldBy } from '../../../../src/state/kit-telling';
import { lookAt, openMeasure } from './open-measure';

/** Measures the cue in play, and then plays with another. */
async function measuredThenPutDown(opened: Awaited<ReturnType<typeof openMeasure>>) {
  const { measure, kit, rest, shootLine } = opened;
  const cue = kit.current.cues.value;
  const squirtM = () => tellingsOf(opened, 'cues', cue).squirt?.value ?? 0;
  await lookAt(measure);
  shootLine(-0.07);
  await rest();
  await expect.poll(() => toldBy(opened, 'cues', cue), { timeout: 60_000 }).toBe('readings');
  const inPlayM = squirtM();
  const other = kit.shelves.cues.value.find(({ id }) => id !== cue.id);
  kit.choose('cues', other?.id ?? '');
  await rest();
  await expect.poll(() => measure.isFresh.value, { timeout: 60_000 }).toBe(true);
  return { cue, inPlayM, squirtM };
}

describe('what is told of a cue that was put down', () => {
  it('stays what was measured of it', async () => {
    const opened = await openMeasure({
      fit: async (job) => fitReport({ ...job, candidates: [] }),
    });
    const own = tellingsOf(opened, 'cues', opened.kit.current.cues.value).squirt?.value ?? 0;
    const { cue, inPlayM, squirtM } = await measuredThenPutDown(opened);
    expect(toldBy(opened, 'cues', cue)).toBe('readings');
    expect(Math.abs(inPlayM - own)).toBeGreaterThan(0.001);
    expect(squirtM()).toBeCloseTo(inPlayM, 4);
    const never = opened.kit.shelves.cues.value.find(
      ({ id }) => id !== cue.id && id !== opened.kit.current.cues.value.id,
    );
    expect(never && toldBy(opened, 'cues', never)).toBe('numbers');
  }, 160_000);

  it('is owned to be what was typed where the report says nothing of it', async () => {
    // The invented fit has no word on what is out of play.
    const opened = await openMeasure();
    const { cue } = await measuredThenPutDown(opened);
    expect(toldBy(opened, 'cues', cue)).toBe('unread');
    expect(opened.measure.shotsReadOn('cues', cue)).toBe(1);
    opened.kit.markChange('cues', cue.id, 'new tip');
    const changed = opened.kit.find('cues', cue.id);
    expect(changed && opened.measure.shotsReadOn('cues', changed)).toBe(0);
  });
});
