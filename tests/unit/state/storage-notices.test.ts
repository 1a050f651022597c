import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { createStorageNotices } from '../../../src/state/storage-notices';
import { createNoticeBoard } from '../../../src/store/notice-board';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

/** Notices over a board; saving again tells the time, and works from the given one on. */
function setUp(savesFromMs = Number.POSITIVE_INFINITY) {
  const board = createNoticeBoard();
  const start = Date.now();
  const triedMs: number[] = [];
  const done: string[] = [];
  const storage = createStorageNotices({
    store: {
      onNotice: board.onNotice,
      saveUnsaved: async () => {
        const now = Date.now() - start;
        triedMs.push(now);
        done.push('save');
        if (now >= savesFromMs) board.lower('full', 'write-failed');
      },
    },
    flush: async () => void done.push('flush'),
  });
  const kinds = () => storage.notices.value.map(({ kind }) => kind);
  return { board, storage, triedMs, done, kinds };
}

it('tell each kind once, the last said of it, until it is over', () => {
  const { board, storage, kinds } = setUp();
  board.raise('closed');
  board.raise('full', ['attempts']);
  board.raise('full', ['attempts', 'desk']);
  expect(kinds()).toEqual(['closed', 'full']);
  expect(storage.notices.value[1]?.unsaved).toEqual(['attempts', 'desk']);
  board.lower('closed');
  expect(kinds()).toEqual(['full']);
});

it('have what is not saved tried again, more and more seldom, until it is', async () => {
  const { board, triedMs, kinds } = setUp(15_000);
  board.raise('write-failed');
  await vi.advanceTimersByTimeAsync(200_000);
  expect(triedMs).toEqual([1000, 3000, 7000, 15_000]);
  expect(kinds()).toEqual([]);
  board.raise('full');
  await vi.advanceTimersByTimeAsync(1000);
  expect(triedMs).toHaveLength(5);
});

it('never wait longer than a minute', async () => {
  const { board, triedMs } = setUp();
  board.raise('full');
  await vi.advanceTimersByTimeAsync(600_000);
  const waits = triedMs.slice(1).map((at, index) => at - (triedMs[index] ?? 0));
  expect(Math.max(...waits)).toBe(60_000);
});

it('have it tried at once when asked, the models before the rest', async () => {
  const { board, storage, done } = setUp(0);
  board.raise('full');
  await storage.retry();
  expect(done).toEqual(['flush', 'save']);
  await vi.advanceTimersByTimeAsync(100_000);
  expect(done).toEqual(['flush', 'save']);
});

it('say that all is kept since, until that is seen or something is not kept again', async () => {
  const { board, storage, kinds } = setUp(0);
  board.raise('full');
  expect(storage.isKeptSince.value).toBe(false);
  await vi.advanceTimersByTimeAsync(1000);
  expect(kinds()).toEqual([]);
  expect(storage.isKeptSince.value).toBe(true);
  storage.dismiss();
  expect(storage.isKeptSince.value).toBe(false);
  board.raise('write-failed');
  board.raise('full');
  board.lower('full');
  expect(storage.isKeptSince.value).toBe(false);
  board.lower('write-failed');
  expect(storage.isKeptSince.value).toBe(true);
  board.raise('full');
  expect(storage.isKeptSince.value).toBe(false);
});

it('say nothing of it to whoever asked for it, nor of trouble that kept nothing back', async () => {
  const { board, storage } = setUp(0);
  board.raise('full');
  await storage.retry();
  expect(storage.isKeptSince.value).toBe(false);
  board.raise('closed');
  board.lower('closed');
  expect(storage.isKeptSince.value).toBe(false);
});

it('leave alone what a reload alone can mend', async () => {
  const { board, done } = setUp();
  board.raise('outdated');
  board.raise('replaced');
  await vi.advanceTimersByTimeAsync(100_000);
  expect(done).toEqual([]);
});
