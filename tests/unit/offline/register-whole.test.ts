import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { registerWhole } from '../../../src/offline/register-whole';

const SCOPE = 'https://example.test/app/';

let files: string[];
beforeEach(() => {
  vi.useFakeTimers();
  files = [];
  const ofScope = `workbox-precache-v2-${SCOPE}`;
  const others = 'workbox-precache-v2-https://example.test/';
  vi.stubGlobal('caches', {
    keys: async () => [ofScope, others],
    open: async (name: string) => ({ keys: async () => (name === ofScope ? files : ['theirs']) }),
  });
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

function registering(active: (attempt: number) => boolean) {
  const unregister = vi.fn(async () => true);
  const register = vi.fn(async () => {
    const isActive = active(register.mock.calls.length);
    return { scope: SCOPE, active: isActive ? {} : null, unregister };
  });
  const outcome = registerWhole(
    register as unknown as () => Promise<ServiceWorkerRegistration | undefined>,
  );
  return { register, unregister, outcome };
}

it('registers once where there is no worker yet, and where the one there has its files', async () => {
  const first = registering(() => false);
  await first.outcome;
  files = ['index.html'];
  const later = registering(() => true);
  await later.outcome;
  for (const { register, unregister } of [first, later]) {
    expect(register).toHaveBeenCalledOnce();
    expect(unregister).not.toHaveBeenCalled();
  }
});

it('lets a worker go that came back without its files, until a new one is installed', async () => {
  const { register, unregister, outcome } = registering((attempt) => attempt < 3);
  await vi.runAllTimersAsync();
  expect((await outcome)?.active).toBeNull();
  expect(register).toHaveBeenCalledTimes(3);
  expect(unregister).toHaveBeenCalledTimes(2);
});

it('makes do with it after five times, rather than go on for ever', async () => {
  const { register, outcome } = registering(() => true);
  await vi.runAllTimersAsync();
  expect((await outcome)?.active).not.toBeNull();
  expect(register).toHaveBeenCalledTimes(5);
});
