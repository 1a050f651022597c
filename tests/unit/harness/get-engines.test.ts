import { afterEach, describe, expect, it, vi } from 'vitest';
import { findWebKit } from '../../harness/engines/find-webkit';
import { getFirefox, getWebKit } from '../../harness/engines/get-engines';

afterEach(() => {
  vi.unstubAllEnvs();
});

it('takes the Firefox it is told to take', async () => {
  // Any program that answers to --version will do here.
  vi.stubEnv('LEEWAY_FIREFOX', process.execPath);
  expect(await getFirefox()).toBe(process.execPath);
});

describe('a browser that is named and is not there', () => {
  it('is told by its setting, and no other is taken or fetched', async () => {
    vi.stubEnv('LEEWAY_FIREFOX', 'no/such/firefox');
    vi.stubEnv('LEEWAY_WEBKIT', 'no/such/webkit');
    await expect(getFirefox()).rejects.toThrow('LEEWAY_FIREFOX names no/such/firefox');
    await expect(getWebKit()).rejects.toThrow('LEEWAY_WEBKIT names no/such/webkit');
    await expect(findWebKit()).rejects.toThrow('LEEWAY_WEBKIT');
  });
});
