import { expect, it } from 'vitest';
import { gzippedCodeBytes, shippedCode } from './shipped-code';

/** Shot, Kit and the offline shell took 58 kB of 60; the room for error came with 8 more. */
const BUDGET_BYTES = 68_000;

it('sends at most 68 kB of scripts and styles, gzipped, the service worker among them', () => {
  expect(shippedCode).toContain('sw.js');
  expect(shippedCode.length).toBeGreaterThan(1);
  expect(gzippedCodeBytes()).toBeLessThanOrEqual(BUDGET_BYTES);
});
