import { afterEach, beforeEach, describe, vi } from 'vitest';
import { createStore } from '../../src/store/create-store';
import { fetchMemory } from '../harness/fetch-memory';
import { newDevice, newDraftStorage } from './new-device';

/** Runs tests on a new device that keeps what is saved, and on one without storage. */
export function onEitherStorage(what: string, tests: (keeps: boolean) => void): void {
  describe.each([
    ['on the device', true],
    ['without storage', false],
  ])(`${what} kept %s`, (_, keeps) => {
    beforeEach(() => {
      newDevice();
      if (!keeps) vi.stubGlobal('indexedDB', undefined);
    });
    afterEach(() => {
      vi.unstubAllGlobals();
      vi.restoreAllMocks();
    });
    tests(keeps);
  });
}

export async function openApp() {
  const store = createStore({ fetchMemory, findDraftStorage: newDraftStorage });
  const loaded = await store.loadAll();
  return { store, loaded };
}
