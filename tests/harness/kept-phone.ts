import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { killBrowser } from './kill-browser';
import { launchWithProfile } from './launch-browser';
import { untilRendered } from './open-app';
import { settle } from './read-shot';
import { type StaticServer, startStaticServer } from './static-server';

/** A phone whose browser can be killed and started again: what it stored is there. */
export interface KeptPhone {
  launch(): Promise<BrowserContext>;
  /** As a phone does that runs out of memory. */
  kill(context: BrowserContext): Promise<void>;
  /** Opens the app at a place, and waits until it stands still. */
  goTo(page: Page, hash: string): Promise<void>;
  /** Clears all that the site stored, as a person may, and opens the page anew. */
  clearSite(page: Page): Promise<void>;
}

/** Sets up the built app's server and such a phone, for all tests of a file; both are gone after them. */
export function keptPhone(): KeptPhone {
  let profile: string;
  let server: StaticServer;
  beforeAll(async () => {
    profile = await mkdtemp(join(tmpdir(), 'leeway-profile-'));
    server = await startStaticServer({ folder: 'dist' });
  });
  afterAll(async () => {
    await server.stop();
    await rm(profile, { recursive: true, force: true, maxRetries: 5 });
  });
  return {
    launch: () => launchWithProfile(profile),
    kill: (context) => killBrowser(context, profile),
    async goTo(page, hash) {
      await page.goto(`${server.url}#${hash}`);
      await untilRendered(page);
      await settle(page);
    },
    async clearSite(page) {
      const session = await page.context().newCDPSession(page);
      await session.send('Storage.clearDataForOrigin', {
        origin: server.origin,
        storageTypes: 'indexeddb,local_storage',
      });
      await page.reload();
      await untilRendered(page);
    },
  };
}
