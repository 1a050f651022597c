import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { describe, expect, it } from 'vitest';
import { onEmptyPage, press } from './empty-page';
import { begunAttempt, FINISHED_LINE } from './invented-trials';
import { openMeasure } from './open-measure';

onEmptyPage();

const keys = async (text: string) => {
  for (const key of text) await press(key);
};
const heading = (name: string) => screen.findByRole('heading', { level: 1, name });

describe('an attempt', () => {
  it('is done step by step, and ends with what was read', async () => {
    const { measure } = openMeasure('#kit/measure/attempt-line', [begunAttempt('line')]);
    await heading('Place the cue ball');
    await press('It is placed');
    await heading('Play it');
    await press('Played');
    await heading('Where did it touch?');
    await keys('8.5');
    await press('left');
    await press('Enter');
    await heading('Taken down');
    expect(measure.progress('attempt-line')?.attempt.readings.landingM).toBeCloseTo(-0.085, 12);
    await screen.findByText('It counts.');
    expect(screen.getByText('85 mm').textContent).toContain('left');
  });

  it('keeps what stands on the keypad at every key', async () => {
    const { measure } = openMeasure('#kit/measure/attempt-line', [
      { ...begunAttempt('line'), stepsDone: ['place', 'play'] },
    ]);
    await keys('12');
    expect(measure.progress('attempt-line')?.attempt.typed).toEqual({
      step: 'landingM',
      text: '12 cm',
    });
  });

  it('opens where it was left, with what stood on the keypad in its unit', async () => {
    openMeasure('#kit/measure/attempt-line', [
      {
        ...begunAttempt('line'),
        stepsDone: ['place', 'play'],
        typed: { step: 'landingM', text: '0.5 diamonds right' },
      },
    ]);
    expect((await screen.findByLabelText('Figure')).textContent).toMatch(/^0\.5.*right/);
    expect(screen.getByRole<HTMLSelectElement>('combobox', { name: 'Unit' }).value).toBe(
      'diamonds',
    );
  });

  it('takes a landing from a touch of the drawn rail, on the keypad as if it were typed', async () => {
    const { measure } = openMeasure('#kit/measure/attempt-line', [
      { ...begunAttempt('line'), stepsDone: ['place', 'play'] },
    ]);
    const rail = await screen.findByRole('img', { name: /^The table from above/ });
    // A drawing that is not laid out is taken to be 360 px wide, its middle diamond at 180.
    fireEvent.pointerDown(rail, { clientX: 150 });
    expect(measure.progress('attempt-line')?.attempt.typed?.text).toMatch(/^[\d.]+ cm left whole$/);
    fireEvent.pointerMove(rail, { clientX: 230, buttons: 1 });
    await expect
      .poll(() => screen.getByLabelText('Figure').textContent)
      .toMatch(/^[\d.]+ .*→ right$/);
    await press('Enter');
    await heading('Taken down');
    expect(measure.progress('attempt-line')?.attempt.readings.landingM).toBeGreaterThan(0.05);
  });

  it('begins a figure anew at the first digit after a touch of the rail, its way standing', async () => {
    const { measure } = openMeasure('#kit/measure/attempt-line', [
      { ...begunAttempt('line'), stepsDone: ['place', 'play'] },
    ]);
    const typed = () => measure.progress('attempt-line')?.attempt.typed?.text;
    fireEvent.pointerDown(await screen.findByRole('img', { name: /^The table from above/ }), {
      clientX: 230,
    });
    expect(typed()).toMatch(/^[\d.]+ cm right whole$/);
    await keys('7.5');
    expect(typed()).toBe('7.5 cm right');
  });

  it('takes no figure of a touch for one in another unit, and keeps the digits that were typed', async () => {
    const { measure } = openMeasure('#kit/measure/attempt-line', [
      {
        ...begunAttempt('line'),
        stepsDone: ['place', 'play'],
        typed: { step: 'landingM', text: '7.9 cm left whole' },
      },
    ]);
    const choose = async (value: string) =>
      fireEvent.change(await screen.findByRole('combobox', { name: 'Unit' }), {
        target: { value },
      });
    const typed = () => measure.progress('attempt-line')?.attempt.typed?.text;
    await choose('in');
    expect(typed()).toBe('– in left');
    await keys('3');
    await choose('cm');
    expect(typed()).toBe('3 cm left');
  });

  it('tells a small landing in small units though diamonds were chosen', async () => {
    const { container } = openMeasure('#kit/measure/attempt-line', [
      { ...begunAttempt('line'), stepsDone: ['place', 'play'] },
    ]);
    const told = () => container.textContent ?? '';
    await expect.poll(told, { timeout: 100_000 }).toMatch(/Expected: [\d.]+ cm/);
    fireEvent.change(screen.getByRole('combobox', { name: 'Unit' }), {
      target: { value: 'diamonds' },
    });
    await expect.poll(told).toMatch(/Expected: \d+ mm [←→]/);
  }, 120_000);

  it('can be taken back from its result, with the reading still there', async () => {
    const { measure } = openMeasure('#kit/measure/attempt-line', [FINISHED_LINE]);
    await heading('Taken down');
    await press(/step back$/);
    await heading('Where did it touch?');
    expect(measure.progress('attempt-line')?.attempt.readings).toEqual({});
    expect(screen.getByLabelText('Figure').textContent).toMatch(/^8\.2.*left/);
    await keys('4');
    await press('Enter');
    await heading('Taken down');
    expect(measure.progress('attempt-line')?.attempt.readings.landingM).toBeCloseTo(-0.04, 12);
  });

  it('says what is expected before the reading, and what it did to the aim after it', async () => {
    const { container } = openMeasure('#kit/measure/attempt-line', [
      { ...begunAttempt('line'), stepsDone: ['place', 'play'] },
    ]);
    const told = () => container.textContent ?? '';
    await expect.poll(told, { timeout: 100_000 }).toMatch(/Expected: [\d.]+ cm [←→] (left|right)/);
    await keys('8.5');
    await press('left');
    await press('Enter');
    await expect
      .poll(told, { timeout: 100_000 })
      .toMatch(/now ±\d+ mm, was ±\d+; (not )?good enough for/);
  }, 240_000);

  it('asks which way before it takes a figure, and says so in words', async () => {
    const { measure } = openMeasure('#kit/measure/attempt-line', [
      { ...begunAttempt('line'), stepsDone: ['place', 'play'] },
    ]);
    await keys('9');
    await press('Enter');
    await screen.findByText(/Say which way: left or right\./);
    expect(measure.progress('attempt-line')?.now?.name).toBe('landingM');
  });

  it('refuses a figure that cannot be, and keeps it to be mended', async () => {
    const { measure } = openMeasure('#kit/measure/attempt-line', [
      { ...begunAttempt('line'), stepsDone: ['place', 'play'] },
    ]);
    await keys('900');
    await press('left');
    await press('Enter');
    await screen.findByText(/too little to be right/);
    expect(measure.progress('attempt-line')?.attempt.typed?.text).toBe('900 cm left');
  });

  it('goes a step back, with what was read on the keypad again', async () => {
    const { measure } = openMeasure('#kit/measure/attempt-stop', [
      {
        ...begunAttempt('stop'),
        stepsDone: ['place', 'play', 'cueBallM'],
        readings: { cueBallM: -0.12 },
      },
    ]);
    await heading('Where is the other ball?');
    await press(/Step back/);
    await heading('Where is the cue ball?');
    expect(measure.progress('attempt-stop')?.attempt.readings.cueBallM).toBeUndefined();
    expect(screen.getByLabelText('Figure').textContent).toMatch(/^12.*back/);
  });

  it('raises the butt by the cue’s length, which can be said', async () => {
    openMeasure('#kit/measure/attempt-curve', [{ ...begunAttempt('curve'), stepsDone: ['place'] }]);
    const height = async () =>
      /(\d+) cm above/.exec((await screen.findByText(/Raise it until/)).textContent ?? '')?.[1];
    const before = Number(await height());
    const field = screen.getByRole<HTMLInputElement>('textbox', { name: /^Cue’s length/ });
    expect(field.value).toBe('147');
    field.value = '120';
    fireEvent.input(field);
    fireEvent.change(field);
    await expect.poll(async () => Number(await height())).toBeLessThan(before);
  });

  it('asks about a height far from the one wanted, and takes no second Enter for an answer', async () => {
    const { measure } = openMeasure('#kit/measure/attempt-curve', [
      { ...begunAttempt('curve'), stepsDone: ['place'] },
    ]);
    const kept = () => measure.progress('attempt-curve')?.attempt.butt;
    await keys('5');
    await press('Enter');
    await screen.findByText(/^5 cm raises the cue 1°, not 20°: is that right\?/);
    expect(kept()).toBeNull();
    await keys('4');
    expect(screen.queryByText(/is that right/)).toBeNull();
    await press('Delete a digit');
    await press('Enter');
    await press('Enter');
    expect(kept()).toBeNull();
    await press('Yes, it is');
    await heading('Play it and time it');
    expect(kept()).toEqual({ buttHeightM: 0.05, cueLengthM: 1.47 });
  });

  it('takes a height near the one wanted without a word', async () => {
    const { measure } = openMeasure('#kit/measure/attempt-curve', [
      { ...begunAttempt('curve'), stepsDone: ['place'] },
    ]);
    await keys('51');
    await press('Enter');
    await heading('Play it and time it');
    expect(measure.progress('attempt-curve')?.attempt.butt?.buttHeightM).toBeCloseTo(0.51, 9);
  });

  it('warns that a raised cue can do harm, before it is raised', async () => {
    openMeasure('#kit/measure/attempt-curve', [begunAttempt('curve')]);
    await screen.findByText(/can tear cloth/);
  });

  it('keeps the screen lit, and says so where it cannot', async () => {
    const { lastLock, app } = openMeasure('#kit/measure/attempt-line', [begunAttempt('line')]);
    await expect.poll(() => lastLock().isHeld).toBe(true);
    // As a browser does while the battery is low.
    lastLock().takeBack();
    const note = await screen.findByText('Your screen may go dark: tap it now and then.');
    const main = screen.getByRole('button', { name: 'It is placed' });
    expect(main.compareDocumentPosition(note)).toBe(Node.DOCUMENT_POSITION_FOLLOWING);
    app.awake.hold();
    await expect.poll(() => lastLock().isHeld).toBe(true);
    app.router.close();
    await expect.poll(() => lastLock().isHeld).toBe(false);
  });

  it('puts the focus on what has come up', async () => {
    openMeasure('#kit/measure/attempt-line', [begunAttempt('line')]);
    await press('It is placed');
    const title = await heading('Play it');
    await expect.poll(() => document.activeElement).toBe(title);
  });

  it('says so where there is no such attempt', async () => {
    openMeasure('#kit/measure/gone');
    await screen.findByText('This one is no longer here.');
  });

  it('has at hand what can be done about a reading that looks like a slip', async () => {
    const { measure } = openMeasure('#kit/measure/attempt-line', [
      { ...FINISHED_LINE, readings: { landingM: 0.04 } },
    ]);
    await screen.findByText(/Doubtful: it looks like a slip/, {}, { timeout: 60_000 });
    await press('Strike out');
    expect(measure.progress('attempt-line')?.attempt.isStruckOut).toBe(true);
    await screen.findByText(/Struck out: it does not count/);
    await press('Take back in');
    expect(measure.progress('attempt-line')?.attempt.isStruckOut).toBe(false);
    await press('Play it again');
    await heading('Place the cue ball');
    expect(measure.unfinished.value?.attempt.shot).toEqual(FINISHED_LINE.shot);
  }, 120_000);

  it('tells what was expected before the reading, whatever was read then', async () => {
    const expected = async (landingM: number) => {
      const attempt = { ...FINISHED_LINE, readings: { landingM } };
      const { container } = openMeasure('#kit/measure/attempt-line', [attempt]);
      const told = () => /expected (\d+ mm [^,]*)/.exec(container.textContent ?? '')?.[1];
      await expect.poll(told, { timeout: 100_000 }).toBeDefined();
      const words = told();
      cleanup();
      return words;
    };
    expect(await expected(-0.082)).toBe(await expected(-0.02));
  }, 240_000);
});
