import { expect, it, vi } from 'vitest';
import { watchForUpdate } from '../../../src/offline/watch-for-update';
import { FakeRegistration, FakeWorker } from './fake-registration';

function watch(set: Partial<Record<'active' | 'waiting' | 'installing', FakeWorker>> = {}) {
  const registration = Object.assign(new FakeRegistration(), set);
  const onReady = vi.fn();
  watchForUpdate(registration as unknown as ServiceWorkerRegistration, onReady);
  return { registration, onReady };
}

it('says nothing of the first worker, which replaces nothing', () => {
  const { registration, onReady } = watch();
  registration.startInstalling().become('installed');
  expect(onReady).not.toHaveBeenCalled();
});

it('reports one that has been waiting since before the page opened', () => {
  expect(
    watch({ active: new FakeWorker(), waiting: new FakeWorker() }).onReady,
  ).toHaveBeenCalledOnce();
});

it('reports one that another tab had begun to install', () => {
  const installing = new FakeWorker();
  const { onReady } = watch({ active: new FakeWorker(), installing });
  expect(onReady).not.toHaveBeenCalled();
  installing.become('installed');
  expect(onReady).toHaveBeenCalledOnce();
});

it('reports every later one, and none that breaks off', () => {
  const { registration, onReady } = watch({ active: new FakeWorker() });
  registration.startInstalling().become('redundant');
  registration.startInstalling().become('redundant');
  expect(onReady).not.toHaveBeenCalled();
  registration.startInstalling().become('installed');
  expect(onReady).toHaveBeenCalledTimes(1);
  registration.startInstalling().become('installed');
  expect(onReady).toHaveBeenCalledTimes(2);
});

it('does not report the same one again as it takes over', () => {
  const { registration, onReady } = watch({ active: new FakeWorker() });
  const worker = registration.startInstalling();
  worker.become('installed');
  worker.become('activating');
  worker.become('activated');
  expect(onReady).toHaveBeenCalledOnce();
});
