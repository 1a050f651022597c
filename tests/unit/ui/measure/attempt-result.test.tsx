import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { describe, expect, it } from 'vitest';
import { TRIAL_STEPS } from '../../../../src/state/measure/trial-steps';
import { DEFAULT_DESK } from '../../../../src/store/default-desk';
import { onEmptyPage, press } from './empty-page';
import { begunAttempt, FINISHED_LINE, OTHER_SIDE } from './invented-trials';
import { openMeasure } from './open-measure';

onEmptyPage();

const PATIENCE = { timeout: 60_000 };
/** Far, and with side: one line is not enough for it. */
const FAR = { ...DEFAULT_DESK.shot, distanceM: 1.6, side: 0.4 };
const near = () => screen.findByText('✓ Good enough for the shot you have.', {}, PATIENCE);

/** Read on both sides, the other simple ones done: a raised cue comes next. */
const SIMPLE_DONE = (['coast', 'throw'] as const).map((trial) => ({
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
    openMeasure('#kit/measure/attempt-line', [FINISHED_LINE, OTHER_SIDE, ...SIMPLE_DONE]);
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

describe('a name for the cue', () => {
  const asked = () => screen.queryByRole<HTMLInputElement>('textbox', { name: /^Yours now/ });

  it('is asked for once an example was first read, and keeps nobody from going on', async () => {
    const { app } = openMeasure('#kit/measure/attempt-line', [FINISHED_LINE]);
    await near();
    const field = asked();
    expect(field?.value).toBe('House cue');
    if (field) fireEvent.change(field, { target: { value: 'Ash, two-piece' } });
    expect(app.kit.current.cues.value.name).toBe('Ash, two-piece');
    await press('To your shot');
    expect(location.hash).toBe('#shot');
  }, 120_000);

  it('is not asked for after the second reading, nor of a cue of one’s own', async () => {
    const { app } = openMeasure('#kit/measure/attempt-line', [FINISHED_LINE]);
    await near();
    app.kit.nudge('cues', 'demo-cue-house', 'tipDiameterM', 1);
    await expect.poll(asked).toBeNull();
    cleanup();
    openMeasure('#kit/measure/attempt-line', [FINISHED_LINE, { ...FINISHED_LINE, id: 'second' }]);
    await near();
    expect(asked()).toBeNull();
  }, 120_000);
});
