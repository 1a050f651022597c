import type { Page } from 'playwright-core';
import { expect, vi } from 'vitest';
import type { ShippedFile } from '../../src/service-worker/stored-app';
import { listedFiles } from './derive-version';
import { PATIENCE_MS } from './patience';
import { type Chosen, spoiledAtOnce, spoilings } from './spoilings';
import type { Disturbance, StaticServer } from './static-server';

/** A browser's page, of which only this is needed. */
export interface Visitor {
  open(url: string): Promise<unknown>;
  readonly evaluate: Page['evaluate'];
}

/** A page of the app's folder that is none of the app: no policy, and no script of its own. */
const openLab = (page: Visitor, { url }: StaticServer) => page.open(`${url}icons/icon-192.png`);

/** Leaves a browser that has never seen the app, on a page beside it. */
export async function startOver(page: Visitor, server: StaticServer): Promise<void> {
  await openLab(page, server);
  await page.evaluate(forgetStored);
  // A worker that is let go lives as long as its last page.
  await openLab(page, server);
}

/**
 * Spoils one file after another while the app is being stored for the first time.
 *
 * @returns what went wrong with which file, in words; [] is as it should be
 */
export async function spoilInstalls(
  page: Visitor,
  server: StaticServer,
  folder: string,
  chosen?: Chosen,
): Promise<string[]> {
  const files = await listedFiles(folder);
  spoil(server);
  server.deploy(folder);
  await startOver(page, server);
  const faults: string[] = [];
  for (const [url, how] of spoilings(files, chosen)) {
    await page.evaluate(keepOnly, []);
    spoil(server, new Map([[url, how]]));
    const state = await page.evaluate(install, server.url);
    if (state !== 'redundant') faults.push(`${url}: a worker is ${state}`);
    faults.push(...untrue(await storedFiles(page, server), files));
  }
  spoil(server);
  return faults;
}

/** The same for files that the system has taken away, asked for one by one at a later visit. */
export async function spoilRevisits(
  page: Visitor,
  server: StaticServer,
  folder: string,
): Promise<string[]> {
  const files = await listedFiles(folder);
  await openLab(page, server);
  const faults: string[] = [];
  for (const round of spoiledAtOnce(files)) {
    const others = files.filter(({ url }) => !round.has(url));
    const addresses = [...round.keys()].map((url) => server.url + url);
    await page.evaluate(keepOnly, keysOf(others, server));
    spoil(server, round);
    await page.evaluate(fetchFiles, addresses);
    const spoiled = await storedFiles(page, server);
    faults.push(...untrue(spoiled, others), ...missing(spoiled, others));
    spoil(server);
    await page.evaluate(fetchFiles, addresses);
    faults.push(...missing(await storedFiles(page, server), files));
  }
  return faults;
}

/** The same while a newer release is fetched beside the older one, which is stored. */
export async function spoilUpdates(
  page: Visitor,
  server: StaticServer,
  { older, newer: folder }: { older: string; newer: string },
  chosen?: Chosen,
): Promise<string[]> {
  const [files, newer] = [await listedFiles(older), await listedFiles(folder)];
  await openLab(page, server);
  const faults: string[] = [];
  let spoiled: ReadonlyMap<string, Disturbance> = new Map();
  for (const [url, how] of spoilings(newer, chosen)) {
    // A browser looks for updates on its own account too. What it fetches between one spoiling and the
    // next would have each file whole once: so it finds no newer worker meanwhile, and is done first.
    hide(server, 'sw.js', spoiled);
    server.deploy(folder);
    await page.evaluate(untilLooked);
    spoiled = new Map([[url, how]]);
    spoil(server, spoiled);
    await page.evaluate(keepOnly, keysOf(files, server));
    const state = await page.evaluate(update);
    if (state !== 'redundant') faults.push(`${url}: a newer worker is ${state}`);
    const stored = await storedFiles(page, server);
    faults.push(...untrue(stored, [...files, ...newer]), ...missing(stored, files));
  }
  spoil(server);
  return faults;
}

/** Opens the app, waits until all of the release in `folder` is stored, and opens it offline. */
export async function openWhole(
  page: Visitor,
  server: StaticServer,
  folder: string,
): Promise<void> {
  const files = await listedFiles(folder);
  await page.open(server.url);
  await vi.waitFor(async () => {
    expect(missing(await storedFiles(page, server), files)).toEqual([]);
    expect(await page.evaluate(() => navigator.serviceWorker.controller?.state)).toBe('activated');
  }, PATIENCE);
  server.disturb(() => 'cut');
  await page.open(server.url);
  const text = () => page.evaluate(() => document.querySelector('#app')?.textContent ?? '');
  await vi.waitFor(async () => expect(await text()).toMatch(/\S/), PATIENCE);
  spoil(server);
}

/**
 * Spoils these files, and no others. A browser keeps no honest file by itself: it would have it at
 * hand the next time. A spoiled one it may keep, as long as the file itself.
 */
function spoil(server: StaticServer, spoiled?: ReadonlyMap<string, Disturbance>): void {
  server.disturb((path) => spoiled?.get(path) ?? { cache: 'no-store' });
}

/** Spoils these files, and lets another not be reached at all. */
function hide(
  server: StaticServer,
  hidden: string,
  spoiled: ReadonlyMap<string, Disturbance>,
): void {
  server.disturb((path) =>
    path === hidden ? 'cut' : (spoiled.get(path) ?? { cache: 'no-store' }),
  );
}

const PATIENCE = { timeout: PATIENCE_MS, interval: 50 };

const storedFiles = (page: Visitor, server: StaticServer) => page.evaluate(readStored, server.url);

const keysOf = (files: readonly ShippedFile[], server: StaticServer) =>
  files.map(({ url, integrity }) => `${server.url}${url}?${encodeURIComponent(integrity)}`);

const untrue = (stored: readonly ShippedFile[], files: readonly ShippedFile[]) =>
  stored.filter((one) => !holds(files, one)).map(({ url }) => `${url} is stored, and is not it`);

const missing = (stored: readonly ShippedFile[], files: readonly ShippedFile[]) =>
  files.filter((one) => !holds(stored, one)).map(({ url }) => `${url} is not stored`);

const holds = (files: readonly ShippedFile[], { url, integrity }: ShippedFile) =>
  files.some((file) => file.url === url && file.integrity === integrity);

// What follows runs in a page: it sees nothing but that and its argument.

async function forgetStored(): Promise<void> {
  await (await navigator.serviceWorker.getRegistration())?.unregister();
  for (const name of await caches.keys()) await caches.delete(name);
}

/** Deletes whatever is stored under other keys. */
async function keepOnly(kept: readonly string[]): Promise<void> {
  for (const name of await caches.keys()) {
    const cache = await caches.open(name);
    for (const key of await cache.keys()) if (!kept.includes(key.url)) await cache.delete(key);
  }
}

/** What is stored of the app in `folder`, by the digest of what it holds. */
async function readStored(folder: string): Promise<{ url: string; integrity: string }[]> {
  const found: { url: string; integrity: string }[] = [];
  for (const name of await caches.keys()) {
    const cache = await caches.open(name);
    for (const key of await cache.keys()) {
      const body = await (await cache.match(key))?.arrayBuffer();
      const digest = await crypto.subtle.digest('SHA-256', body ?? new ArrayBuffer(0));
      const text = btoa(String.fromCharCode(...new Uint8Array(digest)));
      const [url = ''] = key.url.slice(folder.length).split('?');
      found.push({ url, integrity: `sha256-${text}` });
    }
  }
  return found;
}

/** Registers the worker in `folder`; gives what became of it. */
async function install(folder: string): Promise<string> {
  const address = `${folder}sw.js`;
  const registration = await navigator.serviceWorker.register(address, { updateViaCache: 'none' });
  const worker = registration.installing ?? registration.active;
  if (!worker) return 'redundant';
  await new Promise<void>((resolve) => {
    const look = () => worker.state !== 'installing' && resolve();
    worker.addEventListener('statechange', look);
    look();
  });
  return worker.state;
}

/**
 * Waits until whatever looks for a newer worker already is done, and what it found installed or not:
 * a browser takes one such look of a registration after the other, and this one is the last.
 */
async function untilLooked(): Promise<void> {
  const registration = await navigator.serviceWorker.ready;
  await registration.update().catch(() => undefined);
  const { installing } = registration;
  await new Promise<void>((resolve) => {
    const look = () => installing?.state !== 'installing' && resolve();
    installing?.addEventListener('statechange', look);
    look();
  });
}

/** Looks for a newer worker; gives what became of it. */
async function update(): Promise<string> {
  const registration = await navigator.serviceWorker.ready;
  const outcome = new Promise<string>((resolve) => {
    const onFound = () => {
      const worker = registration.installing;
      if (!worker) return resolve('redundant');
      const look = () => worker.state !== 'installing' && resolve(worker.state);
      worker.addEventListener('statechange', look);
      look();
    };
    registration.addEventListener('updatefound', onFound, { once: true });
  });
  await registration.update().catch(() => undefined);
  return registration.waiting ? 'installed' : outcome;
}

async function fetchFiles(addresses: readonly string[]): Promise<void> {
  for (const address of addresses) {
    await fetch(address).then(
      (response) => response.arrayBuffer(),
      () => undefined,
    );
  }
}
