import { expect, it } from 'vitest';
import { shipped, textOf } from './dist';

/** The files the service worker stores before it calls itself installed. */
function precached(): string[] {
  const list = /\(\[(\{url:"[^\]]*)\]\)/.exec(textOf('sw.js'))?.[1] ?? '';
  return [...list.matchAll(/url:"([^"]+)"/g)].map(([, url = '']) => url);
}

it('stores every file that ships for use without a network, each once', () => {
  const rest = shipped.filter((file) => file !== 'sw.js');
  expect(rest).toContain('index.html');
  expect(precached().sort()).toEqual([...rest].sort());
});

it('waits for the player before an update takes over', () => {
  const worker = textOf('sw.js');
  expect(worker.match(/skipWaiting\(\)/g)).toHaveLength(1);
  expect(worker).toMatch(/"message",\w+=>\{[^}]*"SKIP_WAITING"===[^}]*skipWaiting\(\)/);
});

it('is one file, so no part of it can come from an older version', () => {
  expect(textOf('sw.js')).not.toContain('importScripts(');
  expect(shipped.filter((file) => /workbox/.test(file))).toEqual([]);
});
