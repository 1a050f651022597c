import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { reloadOnce } from '../../../src/offline/reload-once';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

it('reloads when saving is done', async () => {
  const events: string[] = [];
  await reloadOnce(
    async () => events.push('saved'),
    () => events.push('reloaded'),
  )();
  expect(events).toEqual(['saved', 'reloaded']);
});

it('reloads once, however many signs of one update there are', async () => {
  const reload = vi.fn();
  const again = reloadOnce(async () => undefined, reload);
  await Promise.all([again(), again()]);
  await again();
  expect(reload).toHaveBeenCalledOnce();
});

it('reloads although saving fails', async () => {
  const reload = vi.fn();
  await reloadOnce(() => Promise.reject(new Error('disk full')), reload)();
  expect(reload).toHaveBeenCalledOnce();
});

it('waits a second for saving and no longer', async () => {
  const reload = vi.fn();
  void reloadOnce(() => new Promise(() => {}), reload)();
  await vi.advanceTimersByTimeAsync(999);
  expect(reload).not.toHaveBeenCalled();
  await vi.advanceTimersByTimeAsync(1);
  expect(reload).toHaveBeenCalledOnce();
});
