import { afterEach, expect, it, vi } from 'vitest';
import { getChromium } from '../../harness/get-chromium';

afterEach(() => {
  vi.unstubAllEnvs();
});

it('takes the browser it is told to take', async () => {
  // Any program that answers to --version will do here.
  vi.stubEnv('LEEWAY_CHROMIUM', process.execPath);
  expect(await getChromium()).toBe(process.execPath);
});

it('says which setting to correct rather than testing without a browser', async () => {
  vi.stubEnv('LEEWAY_CHROMIUM', 'no/such/browser');
  await expect(getChromium()).rejects.toThrow('LEEWAY_CHROMIUM names no/such/browser');
});
