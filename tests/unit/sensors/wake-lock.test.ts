import { expect, it } from 'vitest';
import { createWakeLock, type WakeLockState } from '../../../src/sensors/wake-lock';
import { fakeWakePage } from './fake-wake-page';

function openPage() {
  const { page, ...fake } = fakeWakePage();
  const states: WakeLockState[] = [];
  const lock = createWakeLock(page, () => states.push(lock.state));
  return { ...fake, states, lock };
}

const refusal = () => Promise.reject(new DOMException('The battery is low', 'NotAllowedError'));

/** Lets everything promised so far happen. */
const settled = () => new Promise((resolve) => setTimeout(resolve));

it('wants nothing until it is held', async () => {
  const { document, request, lock } = openPage();
  document.turn('visible');
  await settled();
  expect(request).not.toHaveBeenCalled();
  expect(lock.state).toBe('off');
});

it('asks within the tap itself, and says once the screen stays lit', async () => {
  const { request, states, lock } = openPage();
  lock.hold();
  expect(request).toHaveBeenCalledWith('screen');
  expect(lock.state).toBe('wanted');
  await settled();
  expect(states).toEqual(['wanted', 'held']);
});

it('asks once however often it is held', async () => {
  const { document, request, lock } = openPage();
  lock.hold();
  lock.hold();
  document.turn('visible');
  await settled();
  lock.hold();
  await settled();
  expect(request).toHaveBeenCalledOnce();
});

it('gives it back on release, and does not ask again', async () => {
  const { document, request, lastLock, states, lock } = openPage();
  lock.hold();
  await settled();
  lock.release();
  expect(lastLock().release).toHaveBeenCalledOnce();
  document.turn('visible');
  await settled();
  expect(request).toHaveBeenCalledOnce();
  expect(states).toEqual(['wanted', 'held', 'off']);
});

it('asks again on return for what the browser took back from a hidden page', async () => {
  const { document, request, lastLock, lock } = openPage();
  lock.hold();
  await settled();
  document.turn('hidden');
  lastLock().takeBack();
  expect(lock.state).toBe('wanted');
  await settled();
  expect(request).toHaveBeenCalledTimes(1);
  document.turn('visible');
  await settled();
  expect(request).toHaveBeenCalledTimes(2);
  expect(lock.state).toBe('held');
});

it('puts up with a refusal, and asks again on return or at the next tap', async () => {
  const { document, request, lock } = openPage();
  request.mockImplementationOnce(refusal).mockImplementationOnce(refusal);
  lock.hold();
  await settled();
  expect(lock.state).toBe('wanted');
  document.turn('visible');
  await settled();
  expect(lock.state).toBe('wanted');
  lock.hold();
  await settled();
  expect(lock.state).toBe('held');
});

it('gives back a lock that comes after it was released', async () => {
  const { lastLock, lock } = openPage();
  lock.hold();
  lock.release();
  await settled();
  expect(lastLock().release).toHaveBeenCalledOnce();
  expect(lock.state).toBe('off');
});

it('keeps one lock when released and held again while the browser still thinks', async () => {
  const { locks, lastLock, lock } = openPage();
  lock.hold();
  lock.release();
  lock.hold();
  await settled();
  expect(locks).toHaveLength(1);
  expect(lastLock().release).not.toHaveBeenCalled();
  expect(lock.state).toBe('held');
});

it('says where the browser has no such thing', async () => {
  const { page } = fakeWakePage();
  const lock = createWakeLock({ ...page, navigator: {} });
  lock.hold();
  await settled();
  expect(lock.state).toBe('unavailable');
  lock.release();
  expect(lock.state).toBe('off');
});
