import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { createLate, fetchWhenIdle } from '../../../src/state/late';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

/** A part that cannot be had until told otherwise. */
function setUp() {
  const network = { isThere: false, asked: 0 };
  const page = new EventTarget();
  const part = createLate(async () => {
    network.asked += 1;
    if (!network.isThere) throw new TypeError('Failed to fetch dynamically imported module');
    return 'the part';
  }, page);
  return { network, page, part };
}

it('is fetched once, however often it is asked for', async () => {
  const { network, part } = setUp();
  network.isThere = true;
  expect(part.here.value).toBeNull();
  expect(await Promise.all([part.fetch(), part.fetch()])).toEqual(['the part', 'the part']);
  expect(await part.fetch()).toBe('the part');
  expect(part.here.value).toBe('the part');
  expect(network.asked).toBe(1);
});

it('is told of as away where it cannot be had, and tried again by itself', async () => {
  const { network, part } = setUp();
  expect(await part.fetch()).toBeNull();
  expect(part.isAway.value).toBe(true);
  network.isThere = true;
  await vi.advanceTimersByTimeAsync(1000);
  expect(part.here.value).toBe('the part');
  expect(part.isAway.value).toBe(false);
});

it('is tried more and more seldom, and at once where a network comes', async () => {
  const { network, page, part } = setUp();
  await part.fetch();
  await vi.advanceTimersByTimeAsync(10 * 60_000);
  expect(network.asked).toBeLessThan(20);
  const before = network.asked;
  network.isThere = true;
  page.dispatchEvent(new Event('online'));
  await vi.advanceTimersByTimeAsync(0);
  expect(network.asked).toBe(before + 1);
  expect(part.here.value).toBe('the part');
  page.dispatchEvent(new Event('online'));
  expect(network.asked).toBe(before + 1);
});

it('waits, with every part, for the page to be idle, and goes on past one that is away', async () => {
  const [first, second] = [setUp(), setUp()];
  second.network.isThere = true;
  const idles: (() => void)[] = [];
  const idle = () => new Promise<void>((resolve) => idles.push(resolve));
  const all = fetchWhenIdle([first.part, second.part], idle);
  expect([first.network.asked, second.network.asked]).toEqual([0, 0]);
  idles[0]?.();
  await vi.advanceTimersByTimeAsync(0);
  expect([first.network.asked, second.network.asked]).toEqual([1, 0]);
  idles[1]?.();
  await all;
  expect(second.part.here.value).toBe('the part');
});
