import { gzipSync } from 'node:zlib';
import { expect, it } from 'vitest';
import { bytesOf, shipped } from './dist';

const BUDGET_BYTES = 60_000;

it('sends at most 60 kB of scripts and styles, gzipped, the service worker among them', () => {
  const code = shipped.filter((file) => /\.(js|css)$/.test(file));
  expect(code).toContain('sw.js');
  expect(code.length).toBeGreaterThan(1);
  const bytes = code.map((file) => gzipSync(bytesOf(file), { level: 9 }).length);
  expect(bytes.reduce((sum, n) => sum + n, 0)).toBeLessThanOrEqual(BUDGET_BYTES);
});
