import { fireEvent, screen, within } from '@testing-library/preact';
import { describe, expect, it } from 'vitest';
import { TRIAL_STEPS } from '../../../../src/state/measure/trial-steps';
import type { Attempt } from '../../../../src/store/attempt';
import { DEFAULT_DESK } from '../../../../src/store/default-desk';
import { onEmptyPage, press } from './empty-page';
import { begunAttempt, FINISHED_LINE, shotOf } from './invented-trials';
import { openMeasure } from './open-measure';

onEmptyPage();

const FINISHED_COAST: Attempt = {
  ...begunAttempt('coast'),
  readings: { timeS: 4 },
  stepsDone: TRIAL_STEPS.coast.map(({ name }) => name),
};

const taken = () => within(screen.getByRole('region', { name: 'Taken down' }));

describe('the Measure page', () => {
  it('claims nothing before anything was read', async () => {
    openMeasure('#kit/measure');
    await screen.findByText(/± .*° is assumed\./);
    expect(screen.queryByText(/was assumed/)).toBeNull();
    expect(screen.getByText('Nothing of this kit is measured yet.')).toBeTruthy();
  });

  it('starts on a level line, and has every trial before the figures', async () => {
    const { container } = openMeasure('#kit/measure');
    const next = await screen.findByRole('region', { name: 'Next' });
    expect(next.textContent).toMatch(/Line, .* side, firm/);
    expect(next.textContent).not.toMatch(/raised cue can tear/);
    const [firstRow, ...rows] = container.querySelectorAll('.trial-row');
    const sure = screen.getByRole('region', { name: 'How sure now' });
    for (const row of [firstRow, ...rows]) {
      expect(row?.compareDocumentPosition(sure)).toBe(Node.DOCUMENT_POSITION_FOLLOWING);
    }
    expect(rows.at(-1)?.textContent).toMatch(
      /^Curve, .*raised cue can tear.*room’s owner first\./s,
    );
  });

  it('keeps all trials where they were first seen, though it is found what teaches most', async () => {
    const { container, measure } = openMeasure('#kit/measure', [
      { ...FINISHED_LINE, isStruckOut: true },
      FINISHED_COAST,
      { ...FINISHED_COAST, id: 'throw', shot: shotOf('throw') },
    ]);
    const rows = () =>
      [...container.querySelectorAll('.trial-row b')].map((row) => row.textContent?.split(',')[0]);
    const order = () => measure.offers.value.map(({ trial }) => trial);
    const [seen, offered] = [rows(), order()];
    expect(seen).toHaveLength(9);
    await expect.poll(order, { timeout: 60_000 }).not.toEqual(offered);
    await expect.poll(() => measure.isFresh.value).toBe(true);
    expect(rows()).toEqual(seen);
  }, 120_000);

  it('has all that is read on it in inches where those are liked', async () => {
    const { container } = openMeasure('#kit/measure', [FINISHED_LINE, FINISHED_COAST], {
      shot: { ...DEFAULT_DESK.shot, distanceM: 1.6, side: 0.4 },
      preferences: { ...DEFAULT_DESK.preferences, lengthUnit: 'in' },
    });
    await screen.findByText(/° was assumed, .*° measured\./, {}, { timeout: 60_000 });
    const told = container.textContent ?? '';
    expect(told).toMatch(/\d in\b/);
    expect(told).not.toMatch(/\d ?(mm|cm|m)\b/);
  }, 120_000);

  it('leads back to the shot first once its aim is sure enough', async () => {
    openMeasure('#kit/measure', [FINISHED_LINE]);
    const next = within(await screen.findByRole('region', { name: 'Next' }));
    const back = await next.findByRole('button', { name: 'To your shot' }, { timeout: 60_000 });
    expect(back.className).toContain('button-main');
    expect(next.getByRole('button', { name: 'Play it' }).className).toBe('button');
  }, 120_000);

  it('begins the shot that comes next by one button', async () => {
    const { measure } = openMeasure('#kit/measure');
    await expect.poll(() => measure.isFresh.value).toBe(true);
    const best = measure.offers.value[0]?.shot;
    await press('Play it');
    expect(location.hash).toMatch(/^#kit\/measure\/./);
    const id = location.hash.replace('#kit/measure/', '');
    expect(measure.progress(id)?.attempt.shot).toEqual(best);
  });

  it('tells beside what was assumed what was measured', async () => {
    openMeasure('#kit/measure', [FINISHED_LINE, { ...FINISHED_LINE, id: 'another' }]);
    await screen.findByText(/° was assumed, .*° measured\./);
    expect(screen.getByText('Cue last measured today.')).toBeTruthy();
  });

  it('leads back to what was left, step and all', async () => {
    openMeasure('#kit/measure', [{ ...begunAttempt('line'), stepsDone: ['place'] }]);
    await press('Go on: Line, right side, firm, step 2 of 3');
    expect(location.hash).toBe('#kit/measure/attempt-line');
  });

  it('strikes an attempt out of the fit and takes it back in', async () => {
    const { measure } = openMeasure('#kit/measure', [FINISHED_LINE]);
    await expect.poll(() => measure.report.value?.shots.length).toBe(1);
    await press(/^Strike out/);
    await expect.poll(() => measure.report.value?.shots.length).toBe(0);
    expect(taken().getByText(/struck out: does not count/)).toBeTruthy();
    await press(/^Take back in/);
    await expect.poll(() => measure.report.value?.shots.length).toBe(1);
  });

  it('deletes an attempt and puts it back', async () => {
    const { measure } = openMeasure('#kit/measure', [FINISHED_LINE]);
    await press(/^Delete Line/);
    expect(measure.attempts.value).toHaveLength(0);
    await taken().findByText(/is deleted/);
    await press('Put it back');
    expect(measure.attempts.value.map(({ attempt }) => attempt.id)).toEqual([FINISHED_LINE.id]);
  });

  it('marks a doubtful reading by a word', async () => {
    const slip = { ...FINISHED_LINE, id: 'slip', readings: { landingM: 0.9 } };
    openMeasure('#kit/measure', [FINISHED_LINE, slip]);
    await taken().findByText(/doubtful/, { selector: '.attempt-state' });
  });
});

describe('a record’s history', () => {
  it('tells what was measured since a change and before it', async () => {
    const { app } = openMeasure('#kit/cues/demo-cue-house', [
      FINISHED_LINE,
      { ...FINISHED_LINE, id: 'another' },
    ]);
    await screen.findByText(/Before any change: squirt .* ± .*°/);
    await press('New tip');
    await screen.findByText(/Since new tip, .*: nothing measured\./);
    expect(app.kit.current.cues.value.changes).toHaveLength(1);
    await press(/Not: new tip/);
    await expect.poll(() => app.kit.current.cues.value.changes.length).toBe(0);
  });

  it('lets a record start like another', async () => {
    const { app } = openMeasure('#kit/cues/demo-cue-house');
    const choice = await screen.findByRole('combobox', { name: 'Starts like' });
    fireEvent.change(choice, { target: { value: 'demo-cue-low' } });
    await expect.poll(() => app.kit.current.cues.value.like).toBe('demo-cue-low');
  });
});
