import { createHash } from 'node:crypto';
import { expect, it } from 'vitest';
import { listedFiles } from '../harness/derive-version';
import { bytesOf, shipped, textOf } from './dist';

it('stores every file that the app needs without a network, each once, by its final bytes', async () => {
  // The pictures are for whoever has not installed it yet.
  const rest = shipped.filter((file) => file !== 'sw.js' && !file.startsWith('pictures/'));
  expect(rest).toContain('index.html');
  const digests = rest.map((url) => [
    url,
    `sha256-${createHash('sha256').update(bytesOf(url)).digest('base64')}`,
  ]);
  const listed = (await listedFiles('dist')).map(({ url, integrity }) => [url, integrity]);
  expect(listed.sort()).toEqual(digests.sort());
});

it('waits for the player before an update takes over', () => {
  expect(textOf('sw.js').match(/skipWaiting\(\)/g)).toHaveLength(1);
  expect(textOf('sw.js').match(/SKIP_WAITING/g)).toHaveLength(1);
});

it('is one file, so no part of it can come from an older version', () => {
  expect(textOf('sw.js')).not.toContain('importScripts(');
  expect(shipped.filter((file) => /workbox|sw-/.test(file))).toEqual([]);
});
