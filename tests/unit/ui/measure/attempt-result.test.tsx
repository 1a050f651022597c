import { fireEvent, screen, within } from '@testing-library/preact';
import { describe, expect, it } from 'vitest';
import { TRIAL_STEPS } from '../../../../src/state/measure/trial-steps';
import { DEFAULT_DESK } from '../../../../src/store/default-desk';
import { onEmptyPage, press } from './empty-page';
import { begunAttempt, FINISHED_LINE } from './invented-trials';
import { openMeasure } from './open-measure';

onEmptyPage();

const PATIENCE = { timeout: 60_000 };
/** Far, and with side: one line is not enough for it. */
const FAR = { ...DEFAULT_DESK.shot, distanceM: 1.6, side: 0.4 };
const near = () => screen.findByText('Good enough for the shot you have.', {}, PATIENCE);

/** The simple ones, done and struck out, so that a raised cue comes next. */
const SIMPLE_DONE = (['coast', 'throw', 'line'] as const).map((trial) => ({
  ...begunAttempt(trial),
  readings: { landingM: -0.082 },
  stepsDone: TRIAL_STEPS[trial].map(({ name }) => name),
  isStruckOut: true,
}));

describe('the result of an attempt', () => {
  it('says that it is done once the aim is sure enough, and leads back to the shot first', async () => {
    openMeasure('#kit/measure/attempt-line', [FINISHED_LINE]);
    await near();
    expect(screen.getByRole('button', { name: /^More: / }).className).toBe('button');
    const back = screen.getByRole('button', { name: 'To your shot' });
    expect(back.className).toContain('button-main');
    fireEvent.click(back);
    expect(location.hash).toBe('#shot');
  }, 120_000);

  it('offers first, as long as it is not, the shot that is counted, and says what for', async () => {
    const { app, measure } = openMeasure('#kit/measure/attempt-line', [FINISHED_LINE], {
      shot: FAR,
    });
    await screen.findByText(
      /until it is good enough for the shot you have\. The next is for/,
      {},
      PATIENCE,
    );
    const next = measure.toGo.value?.first?.shot;
    fireEvent.click(screen.getByRole('button', { name: /^Next: / }));
    const id = app.router.route.value.panel.replace('measure/', '');
    expect(measure.progress(id)?.attempt.shot).toEqual(next);
    expect(screen.queryByRole('button', { name: 'To your shot' })).toBeNull();
  }, 120_000);

  it('says what a raised cue may do where it offers one', async () => {
    openMeasure('#kit/measure/attempt-line', SIMPLE_DONE);
    const more = await screen.findByRole('button', { name: /^More: Curve, / }, PATIENCE);
    expect(more.parentElement?.textContent).toMatch(/can tear cloth .* ask the room’s owner/);
  }, 120_000);

  it('says so where a raised shot that looks like a slip can be played again, too', async () => {
    const slip = { ...SIMPLE_DONE[0], ...begunAttempt('curve'), readings: {}, isStruckOut: true };
    const done = TRIAL_STEPS.curve.map(({ name }) => name);
    openMeasure('#kit/measure/attempt-curve', [{ ...slip, stepsDone: done }]);
    const again = await screen.findByRole('button', { name: 'Play it again' });
    expect(again.parentElement?.textContent).toMatch(/can tear cloth/);
  });
});

describe('a name for what is measured', () => {
  const asked = () => screen.queryByRole('region', { name: 'Yours from now on' });

  it('is asked for where an example is first measured', async () => {
    const { app } = openMeasure('#kit/measure/attempt-line', [FINISHED_LINE]);
    await near();
    const region = within(screen.getByRole('region', { name: 'Yours from now on' }));
    expect(region.getAllByRole('textbox')).toHaveLength(1);
    const field = region.getByRole<HTMLInputElement>('textbox', { name: 'Cue' });
    expect(field.value).toBe('House cue');
    fireEvent.change(field, { target: { value: 'Ash, two-piece' } });
    expect(app.kit.current.cues.value.name).toBe('Ash, two-piece');
    expect(asked()).not.toBeNull();
  }, 120_000);

  it('can be left as it is, and is then not asked for again', async () => {
    const { app, measure } = openMeasure('#kit/measure/attempt-line', [FINISHED_LINE]);
    await near();
    await press('Leave it so');
    await expect.poll(asked).toBeNull();
    expect(app.kit.current.cues.value.name).toBe('House cue');
    await press(/step back$/);
    measure.enter('attempt-line', -0.08);
    await screen.findByRole('heading', { level: 1, name: 'Taken down' });
    await near();
    expect(asked()).toBeNull();
  }, 120_000);

  it('is not asked for once it was measured, nor of what has a name of its own', async () => {
    const second = { ...FINISHED_LINE, id: 'second', stepsDone: ['place', 'play'], readings: {} };
    const { app, measure } = openMeasure('#kit/measure', [FINISHED_LINE, second]);
    await expect.poll(() => measure.measured.value, PATIENCE).toContain('cues');
    app.router.open('measure/second');
    await screen.findByRole('heading', { level: 1, name: 'Where did it touch?' });
    measure.enter('second', -0.08);
    await near();
    expect(asked()).toBeNull();
    app.kit.rename('cues', 'demo-cue-house', 'Ash, two-piece');
    app.router.open('measure/attempt-line');
    await near();
    expect(asked()).toBeNull();
  }, 120_000);
});
