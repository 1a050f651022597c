import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { describe, expect, it } from 'vitest';
import { TRIAL_STEPS } from '../../../../src/state/measure/trial-steps';
import { DEFAULT_DESK } from '../../../../src/store/default-desk';
import { OfferButton } from '../../../../src/ui/measure/OfferButton';
import { onEmptyPage, press } from './empty-page';
import { begunAttempt, FINISHED_LINE, shotOf } from './invented-trials';
import { openMeasure } from './open-measure';

onEmptyPage();

const PATIENCE = { timeout: 60_000 };
/** Far, and with side: one line is not enough for it. */
const FAR = { ...DEFAULT_DESK.shot, distanceM: 1.6, side: 0.4 };
const near = () => screen.findByText('✓ Good enough for the shot you have.', {}, PATIENCE);

describe('the result of an attempt', () => {
  it('says that it is done once the aim is sure enough, and leads back to the shot first', async () => {
    openMeasure('#kit/measure/attempt-line', [FINISHED_LINE]);
    await near();
    expect(screen.getByRole('button', { name: /^Next: / }).className).toBe('button');
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
      /until good enough for the shot you have\. The next is for/,
      {},
      PATIENCE,
    );
    const next = measure.toGo.value?.first?.shot;
    fireEvent.click(screen.getByRole('button', { name: /^Next: / }));
    const id = app.router.route.value.panel.replace('measure/', '');
    expect(measure.progress(id)?.attempt.shot).toEqual(next);
    expect(screen.queryByRole('button', { name: 'To your shot' })).toBeNull();
  }, 120_000);

  it('says what a raised cue may do at every button that offers one, and of no other', () => {
    const { app } = openMeasure('#kit/words');
    const told = (trial: 'curve' | 'line') =>
      render(
        <OfferButton app={app} shot={shotOf(trial)}>
          Play it
        </OfferButton>,
      ).container.textContent;
    expect(told('curve')).toMatch(/can tear cloth .* ask the room’s owner.*Play it$/);
    expect(told('line')).toBe('Play it');
  });

  it('says so where a raised shot that looks like a slip can be played again, too', async () => {
    const slip = { ...begunAttempt('curve'), isStruckOut: true };
    const done = TRIAL_STEPS.curve.map(({ name }) => name);
    openMeasure('#kit/measure/attempt-curve', [{ ...slip, stepsDone: done }]);
    const again = await screen.findByRole('button', { name: 'Play it again' });
    expect(again.parentElement?.textContent).toMatch(/can tear cloth/);
  });
});

describe('a name for the cue', () => {
  const asked = () => screen.queryByRole<HTMLInputElement>('textbox', { name: 'Your cue’s name' });

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
