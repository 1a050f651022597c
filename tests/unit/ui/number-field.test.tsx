import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import { NumberField } from '../../../src/ui/controls/NumberField';
import { openShot } from '../state/open-shot';

afterEach(cleanup);

function setUp() {
  const { model } = openShot({ distanceM: 1.15 });
  render(<NumberField model={model} name="distance" label="Distance" />);
  return { model, field: screen.getByRole<HTMLInputElement>('textbox', { name: 'Distance' }) };
}

describe('a number field', () => {
  it('shows the number as it stands', async () => {
    const { model, field } = setUp();
    expect(field.value).toBe('1.15');
    model.setFigure('distance', 2);
    await expect.poll(() => field.value).toBe('2.00');
  });

  it('takes what is typed as it is typed, and tidies it when left', async () => {
    const { model, field } = setUp();
    fireEvent.focus(field);
    fireEvent.input(field, { target: { value: '1 1/2' } });
    expect(model.shot.value.distanceM).toBe(1.5);
    await expect.poll(() => field.value).toBe('1 1/2');
    fireEvent.blur(field);
    await expect.poll(() => field.value).toBe('1.50');
  });

  it('says beside it what is wrong with a bad one, and keeps it to be mended', async () => {
    const { model, field } = setUp();
    fireEvent.focus(field);
    fireEvent.input(field, { target: { value: 'far' } });
    fireEvent.blur(field);
    await expect.poll(() => field.getAttribute('aria-invalid')).toBe('true');
    const line = document.getElementById(field.getAttribute('aria-describedby') ?? '');
    expect(line?.textContent).toContain(model.problems.distance.value?.message);
    expect(field.value).toBe('far');
    model.nudge('distance', 1);
    await expect.poll(() => field.value).toBe('1.16');
    expect(field.getAttribute('aria-describedby')).toBeNull();
  });

  it('forgets a bad one when its control is closed', async () => {
    const { model, field } = setUp();
    fireEvent.focus(field);
    fireEvent.input(field, { target: { value: 'far' } });
    expect(model.stale.value).toBe(true);
    await expect.poll(() => field.getAttribute('aria-invalid')).toBe('true');
    cleanup();
    await expect.poll(() => model.stale.value).toBe(false);
    expect(model.shot.value.distanceM).toBe(1.15);
  });

  it('is undone as one, however many letters were typed', () => {
    const { model, field } = setUp();
    fireEvent.focus(field);
    for (const value of ['2', '2.', '2.2', '2.25']) fireEvent.input(field, { target: { value } });
    fireEvent.blur(field);
    expect(model.shot.value.distanceM).toBe(2.25);
    model.undo();
    expect(model.shot.value.distanceM).toBe(1.15);
  });
});
