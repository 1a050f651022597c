import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { createLaterAtRest } from '../../../src/ui/later-at-rest';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

function setUp() {
  const page = new EventTarget();
  const later = createLaterAtRest(page);
  const happens = (name: string) => page.dispatchEvent(new Event(name));
  return { later, happens };
}

it('works once nothing more has been asked for a moment, whoever asked', () => {
  const { later } = setUp();
  const [first, second] = [vi.fn(), vi.fn()];
  later(first);
  vi.advanceTimersByTime(100);
  later(second);
  vi.advanceTimersByTime(100);
  expect(first).not.toHaveBeenCalled();
  expect(second).not.toHaveBeenCalled();
  vi.advanceTimersByTime(30);
  expect(first).toHaveBeenCalledTimes(1);
  expect(second).toHaveBeenCalledTimes(1);
  vi.advanceTimersByTime(1000);
  expect(second).toHaveBeenCalledTimes(1);
});

it.each(['pointerup', 'pointercancel', 'blur'])('waits while a finger is down, until %s', (end) => {
  const { later, happens } = setUp();
  const work = vi.fn();
  happens('pointerdown');
  later(work);
  vi.advanceTimersByTime(5000);
  expect(work).not.toHaveBeenCalled();
  happens(end);
  vi.advanceTimersByTime(130);
  expect(work).toHaveBeenCalledTimes(1);
});

it('does not when called off, and calling off one spares the other', () => {
  const { later } = setUp();
  const [first, second] = [vi.fn(), vi.fn()];
  const callOffFirst = later(first);
  const callOffSecond = later(second);
  callOffFirst();
  vi.advanceTimersByTime(130);
  expect(second).toHaveBeenCalledTimes(1);
  later(second);
  callOffSecond();
  const callOffThird = later(first);
  callOffThird();
  vi.advanceTimersByTime(500);
  expect(first).not.toHaveBeenCalled();
});
