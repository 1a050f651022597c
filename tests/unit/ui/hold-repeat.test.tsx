import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createHoldRepeat } from '../../../src/ui/controls/hold-repeat';

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['requestAnimationFrame', 'cancelAnimationFrame', 'performance'] });
});
afterEach(() => {
  vi.useRealTimers();
});

function setUp() {
  const action = { begin: vi.fn(), step: vi.fn<(coarse: boolean) => void>(), end: vi.fn() };
  return { action, repeat: createHoldRepeat(() => action) };
}
const down = (button = 0) => new PointerEvent('pointerdown', { button });

describe('a held button', () => {
  it('steps at once when pressed, and only once for a tap', () => {
    const { action, repeat } = setUp();
    repeat.press(down());
    expect(action.step).toHaveBeenCalledTimes(1);
    vi.advanceTimersByTime(200);
    repeat.release();
    repeat.click();
    vi.advanceTimersByTime(2000);
    expect(action.step.mock.calls).toEqual([[false]]);
    expect(action.end.mock.calls).toEqual([[false]]);
  });

  it('takes the step back when slid off, stays still, and heeds the next key', async () => {
    const { action, repeat } = setUp();
    repeat.press(down());
    repeat.slideOff();
    vi.advanceTimersByTime(2000);
    repeat.release();
    repeat.click();
    expect(action.step).toHaveBeenCalledTimes(1);
    expect(action.end.mock.calls).toEqual([[true]]);
    await new Promise((resolve) => setTimeout(resolve));
    repeat.click();
    expect(action.step).toHaveBeenCalledTimes(2);
  });

  it('repeats sooner and sooner while held, and turns to long steps', () => {
    const { action, repeat } = setUp();
    repeat.press(down());
    vi.advanceTimersByTime(1000);
    const inFirst = action.step.mock.calls.length;
    vi.advanceTimersByTime(1000);
    const inSecond = action.step.mock.calls.length - inFirst;
    expect(inFirst).toBeGreaterThan(4);
    expect(inSecond).toBeGreaterThan(inFirst);
    expect(action.step.mock.calls.slice(0, 10).every(([coarse]) => !coarse)).toBe(true);
    expect(action.step.mock.lastCall).toEqual([true]);
  });

  it('steps at most once a frame', () => {
    const { action, repeat } = setUp();
    repeat.press(down());
    vi.advanceTimersByTime(5000);
    const before = action.step.mock.calls.length;
    vi.advanceTimersByTime(160);
    expect(action.step.mock.calls.length - before).toBeLessThanOrEqual(10);
  });

  it('stops when the pointer is taken away, and says whether anything was repeated', () => {
    const { action, repeat } = setUp();
    repeat.press(down());
    repeat.cancel();
    vi.advanceTimersByTime(3000);
    expect(action.step).toHaveBeenCalledTimes(1);
    expect(action.end.mock.calls).toEqual([[true]]);

    repeat.press(down());
    vi.advanceTimersByTime(1000);
    const steps = action.step.mock.calls.length;
    repeat.cancel();
    vi.advanceTimersByTime(3000);
    expect(action.step).toHaveBeenCalledTimes(steps);
    expect(action.end.mock.lastCall).toEqual([false]);
  });

  it('steps for a click that no press came before, such as a key’s', () => {
    const { action, repeat } = setUp();
    repeat.click();
    repeat.click();
    expect(action.step.mock.calls).toEqual([[false], [false]]);
    expect(action.begin).not.toHaveBeenCalled();
  });

  it('leaves other buttons of the mouse alone', () => {
    const { action, repeat } = setUp();
    repeat.press(down(2));
    expect(action.step).not.toHaveBeenCalled();
  });
});
