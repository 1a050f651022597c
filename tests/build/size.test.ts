import { expect, it } from 'vitest';
import { gzippedCodeBytes, shippedCode } from './shipped-code';

const BUDGET_BYTES = 60_000;

it('sends at most 60 kB of scripts and styles, gzipped, the service worker among them', () => {
  expect(shippedCode).toContain('sw.js');
  expect(shippedCode.length).toBeGreaterThan(1);
  expect(gzippedCodeBytes()).toBeLessThanOrEqual(BUDGET_BYTES);
});
