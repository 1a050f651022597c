// @vitest-environment happy-dom
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { checkOnReturn } from '../../../src/offline/check-on-return';

let visibility: DocumentVisibilityState = 'visible';

beforeEach(() => {
  vi.useFakeTimers();
  visibility = 'visible';
  Object.defineProperty(document, 'visibilityState', { configurable: true, get: () => visibility });
});
afterEach(() => {
  vi.useRealTimers();
});

function comeBack(afterMs: number) {
  vi.advanceTimersByTime(afterMs);
  document.dispatchEvent(new Event('visibilitychange'));
}

it('checks when the page comes back into view, and on going back to it', () => {
  const check = vi.fn(async () => undefined);
  checkOnReturn(check);
  comeBack(60_000);
  expect(check).toHaveBeenCalledTimes(1);
  vi.advanceTimersByTime(60_000);
  dispatchEvent(new Event('pageshow'));
  expect(check).toHaveBeenCalledTimes(2);
});

it('checks at most once a minute', () => {
  const check = vi.fn(async () => undefined);
  checkOnReturn(check);
  comeBack(59_999);
  expect(check).not.toHaveBeenCalled();
  comeBack(1);
  comeBack(30_000);
  expect(check).toHaveBeenCalledTimes(1);
});

it('does not check while hidden', () => {
  const check = vi.fn(async () => undefined);
  checkOnReturn(check);
  visibility = 'hidden';
  comeBack(120_000);
  expect(check).not.toHaveBeenCalled();
});

it('tries again after a check that failed for want of a network', () => {
  const check = vi.fn(() => Promise.reject(new TypeError('offline')));
  checkOnReturn(check);
  comeBack(60_000);
  comeBack(60_000);
  expect(check).toHaveBeenCalledTimes(2);
});
