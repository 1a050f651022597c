import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { dropStoredApp } from '../../../src/offline/drop-stored-app';

const SCOPE = 'https://example.test/app/';
const OTHERS = ['workbox-precache-v2-https://example.test/', 'photos'];

let cacheNames: string[];
beforeEach(() => {
  cacheNames = [`workbox-precache-v2-${SCOPE}`, ...OTHERS];
  vi.stubGlobal('document', { baseURI: `${SCOPE}index.html` });
  vi.stubGlobal('caches', {
    keys: async () => [...cacheNames],
    delete: async (name: string) => {
      cacheNames = cacheNames.filter((kept) => kept !== name);
    },
  });
});
afterEach(() => vi.unstubAllGlobals());

class FakeWorker extends EventTarget {
  state = 'parsed';
  become(state: string) {
    this.state = state;
    this.dispatchEvent(new Event('statechange'));
  }
}

function registered(update: () => Promise<unknown>, installing: FakeWorker | null = null) {
  const registration = { scope: SCOPE, installing, update, unregister: vi.fn(async () => true) };
  const serviceWorker = { getRegistration: async () => registration };
  return { registration, browser: { serviceWorker } as unknown as Navigator };
}

it('takes away the worker and the files of this app, no other’s, and tells the other tabs', async () => {
  const told = new Promise((resolve) => {
    const other = new BroadcastChannel(SCOPE);
    other.onmessage = ({ data }) => {
      other.close();
      resolve(data);
    };
  });
  const { registration, browser } = registered(async () => undefined);
  expect(await dropStoredApp(browser)).toBe('dropped');
  expect(registration.unregister).toHaveBeenCalledOnce();
  expect(cacheNames).toEqual(OTHERS);
  expect(await told).toBe('repaired');
});

it('touches nothing where the server cannot be reached', async () => {
  const { registration, browser } = registered(() => Promise.reject(new TypeError('offline')));
  expect(await dropStoredApp(browser)).toBe('unreachable');
  expect(registration.unregister).not.toHaveBeenCalled();
  expect(cacheNames).toHaveLength(3);
});

it.each([
  ['installed', 'dropped'],
  ['redundant', 'unreachable'],
])('waits for a newer app to be fetched: one %s leaves it %s', async (state, outcome) => {
  const worker = new FakeWorker();
  const { registration, browser } = registered(async () => undefined, worker);
  const dropping = dropStoredApp(browser);
  worker.become('installing');
  await new Promise((resolve) => setTimeout(resolve));
  expect(registration.unregister).not.toHaveBeenCalled();
  worker.become(state);
  expect(await dropping).toBe(outcome);
  expect(registration.unregister).toHaveBeenCalledTimes(outcome === 'dropped' ? 1 : 0);
});

it('finds nothing to take away where no worker is registered, or none can be', async () => {
  const serviceWorker = { getRegistration: async () => undefined };
  expect(await dropStoredApp({ serviceWorker } as unknown as Navigator)).toBe('not-stored');
  expect(await dropStoredApp({})).toBe('not-stored');
  expect(cacheNames).toHaveLength(3);
});
