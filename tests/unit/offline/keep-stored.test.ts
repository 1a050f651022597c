// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { keepStored } from '../../../src/offline/keep-stored';
import type { StoreNews } from '../../../src/service-worker/store-news';
import { FakeRegistration, FakeWorker } from './fake-registration';

const SCOPE = 'https://example.test/app/';

/** Hears what is told on it, as every page of the app does. */
let channel: EventTarget & { name?: string };
const tell = async (news: StoreNews) => {
  channel.dispatchEvent(Object.assign(new Event('message'), { data: news }));
  await vi.advanceTimersByTimeAsync(0);
};

beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal(
    'BroadcastChannel',
    class extends EventTarget {
      constructor(readonly name: string) {
        super();
        channel = this;
      }
    },
  );
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

/** @param given the registrations that there are, one after the other; none: the browser refuses */
async function keep(...given: (FakeRegistration | null)[]) {
  const register = vi.fn(async () => {
    const one = given[Math.min(register.mock.calls.length, given.length) - 1];
    if (!one) throw new TypeError('refused');
    return one as unknown as ServiceWorkerRegistration;
  });
  const told: unknown[] = [];
  const onRegistration = vi.fn();
  keepStored({
    scope: SCOPE,
    register,
    onRegistration,
    onLooked: (isWhole) => told.push(isWhole),
    onAltered: (file) => told.push(file),
  });
  await vi.advanceTimersByTimeAsync(0);
  return { register, onRegistration, told };
}

const working = () => Object.assign(new FakeRegistration(), { active: new FakeWorker() });
const fill = (as: string) => ({ type: 'FILL', as });
const WHOLE = { kind: 'whole' } as const;
const ALTERED = { kind: 'altered', file: 'index.html' } as const;

describe('a first visit', () => {
  it('is ready offline once the worker at work finds every file, and not before', async () => {
    const registration = new FakeRegistration();
    const worker = new FakeWorker();
    registration.installing = worker;
    const { told, register } = await keep(registration);
    registration.dispatchEvent(new Event('updatefound'));
    await tell({ by: 'installing', outcome: WHOLE });
    worker.become('activated');
    expect(worker.asked).toEqual([fill('active')]);
    expect(told).toEqual([]);
    await tell({ by: 'active', outcome: WHOLE });
    expect(told).toEqual([true]);
    await vi.runAllTimersAsync();
    expect(register).toHaveBeenCalledOnce();
  });

  it('names what comes altered, and tries again by itself, more and more seldom', async () => {
    const [first, second] = [new FakeRegistration(), working()];
    const worker = new FakeWorker();
    first.installing = worker;
    const { told, register, onRegistration } = await keep(first, first, null, second);
    await tell({ by: 'installing', outcome: ALTERED });
    worker.become('redundant');
    expect(told).toEqual(['index.html']);
    await vi.advanceTimersByTimeAsync(1000);
    expect(register).toHaveBeenCalledTimes(2);
    // The same registration, and another worker that is as unlucky.
    first.startInstalling().become('redundant');
    await vi.advanceTimersByTimeAsync(1999);
    expect(register).toHaveBeenCalledTimes(2);
    await vi.advanceTimersByTimeAsync(1);
    expect(register).toHaveBeenCalledTimes(3);
    await vi.advanceTimersByTimeAsync(4000);
    expect(second.active?.asked).toEqual([fill('active')]);
    expect(onRegistration).toHaveBeenCalledTimes(2);
    await tell({ by: 'active', outcome: WHOLE });
    expect(told).toEqual(['index.html', true]);
    await vi.runAllTimersAsync();
    expect(register).toHaveBeenCalledTimes(4);
  });

  it('tries at once when the network comes back', async () => {
    const { register } = await keep(null, working());
    dispatchEvent(new Event('online'));
    await vi.advanceTimersByTimeAsync(0);
    expect(register).toHaveBeenCalledTimes(2);
  });

  it('tries no more often than once a minute for good', async () => {
    const { register } = await keep(null);
    await vi.advanceTimersByTimeAsync(3_600_000);
    expect(register.mock.calls.length).toBeGreaterThan(50);
    expect(register.mock.calls.length).toBeLessThan(70);
  });
});

describe('a worker that has been here before', () => {
  it('is asked what it has, and so is the one that waits to follow it', async () => {
    const registration = Object.assign(working(), { waiting: new FakeWorker() });
    const { told } = await keep(registration);
    expect(registration.active?.asked).toEqual([fill('active')]);
    expect(registration.waiting?.asked).toEqual([fill('waiting')]);
    await tell({ by: 'waiting', outcome: WHOLE });
    expect(told).toEqual([]);
  });

  it('is asked again until everything is there, where its cache was emptied', async () => {
    const registration = working();
    const { told } = await keep(registration);
    await tell({ by: 'active', outcome: { kind: 'incomplete' } });
    expect(told).toEqual([false]);
    await vi.advanceTimersByTimeAsync(1000);
    expect(registration.active?.asked).toHaveLength(2);
    await tell({ by: 'active', outcome: WHOLE });
    expect(told).toEqual([false, true]);
  });

  it('is whole whatever becomes of an update', async () => {
    const registration = working();
    const { told, register } = await keep(registration);
    await tell({ by: 'active', outcome: WHOLE });
    const update = registration.startInstalling();
    await tell({ by: 'installing', outcome: ALTERED });
    update.become('redundant');
    await vi.runAllTimersAsync();
    expect(told).toEqual([true]);
    expect(register).toHaveBeenCalledOnce();
  });

  it('names what comes altered, unless the host has a newer version', async () => {
    const altered = working();
    const { told } = await keep(altered);
    await tell({ by: 'active', outcome: ALTERED });
    expect(altered.update).toHaveBeenCalledOnce();
    expect(told).toEqual([false, 'index.html']);

    const outdated = working();
    outdated.update.mockImplementation(async () => {
      outdated.installing = new FakeWorker();
      return undefined;
    });
    const other = await keep(outdated);
    await tell({ by: 'active', outcome: ALTERED });
    expect(other.told).toEqual([false]);
  });
});
