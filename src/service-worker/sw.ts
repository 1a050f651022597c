import { ASKS, type Asked, type Role, type StoreNews, storeChannel } from './store-news';
import { createStoredApp, type ShippedFile, type StoreOutcome } from './stored-app';

declare const self: ServiceWorkerGlobalScope & {
  /** The build puts its list here. */
  readonly __WB_MANIFEST: readonly ShippedFile[];
};

const { scope } = self.registration;
const app = createStoredApp({ files: self.__WB_MANIFEST, scope, caches, fetch: fetch.bind(self) });

async function fill(by: StoreNews['by']): Promise<StoreOutcome> {
  const outcome = await app.fill();
  const channel = storeChannel(scope);
  channel.postMessage({ by, outcome } satisfies StoreNews);
  channel.close();
  return outcome;
}

/** @throws Error where a file is missing. */
async function installWhole(): Promise<void> {
  const { kind } = await fill('installing');
  if (kind !== 'whole') throw new Error(`The app is ${kind}.`);
}

/** A worker that was let go, and came back to a page, takes that page in as a new one does. */
async function lookAgain(as: Role): Promise<void> {
  if (as === 'active') await self.clients.claim().catch(() => undefined);
  await fill(as);
}

/** An update waits for the player's word, and for the files that it may have lost meanwhile. */
async function takeOver(): Promise<void> {
  if ((await app.fill()).kind === 'whole') await self.skipWaiting();
}

self.addEventListener('install', (event) => event.waitUntil(installWhole()));

self.addEventListener('activate', (event) => {
  event.waitUntil(Promise.all([app.tidy(), self.clients.claim()]));
});

self.addEventListener('message', (event) => {
  const asked = event.data as Asked | null;
  if (asked?.type === ASKS.takeOver) event.waitUntil(takeOver());
  if (asked?.type === ASKS.fill) event.waitUntil(lookAgain(asked.as));
});

self.addEventListener('fetch', (event) => {
  const answer = app.answer(event.request);
  if (answer) event.respondWith(answer);
});
