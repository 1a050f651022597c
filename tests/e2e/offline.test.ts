import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { guardContext } from '../harness/guard-context';
import { launchWithProfile } from '../harness/launch-browser';
import { type OpenApp, openApp, untilOfflineReady, untilRendered } from '../harness/open-app';
import { startStaticServer } from '../harness/static-server';
import { untilNoWorkerComes } from '../harness/update-at-hand';

describe.each(['/', '/some/where/'])('after one visit to %s, with the server gone', (basePath) => {
  let app: OpenApp;
  let second: Page;
  beforeAll(async () => {
    app = await openApp({ hasWorkers: false, isStored: true, basePath });
    await untilOfflineReady(app.page);
    await app.server.stop();
    app.guard.expectServerGone();
    second = await app.context.newPage();
  });
  afterAll(() => app.close());

  it('reloads', async () => {
    await app.page.reload();
    await untilRendered(app.page);
    expect(app.guard.problems).toEqual([]);
  });

  it.each(['', 'index.html', '?from=home-screen', '#kit', 'nowhere'])(
    'opens in another page at "%s"',
    async (rest) => {
      await second.goto('about:blank');
      await second.goto(app.server.url + rest);
      await untilRendered(second);
      expect(await second.title()).toContain('Leeway');
      expect(app.guard.problems).toEqual([]);
    },
  );
});

describe('a browser closed and started again', () => {
  let profile: string;
  beforeEach(async () => {
    profile = await mkdtemp(join(tmpdir(), 'leeway-profile-'));
  });
  afterEach(() => rm(profile, { recursive: true, force: true, maxRetries: 5 }));

  it('opens with the server gone', async () => {
    const server = await startStaticServer({ folder: 'dist', basePath: '/some/where/' });
    const before = await launchWithProfile(profile);
    const firstPage = await before.newPage();
    await firstPage.goto(server.url);
    await untilOfflineReady(firstPage);
    await before.close();
    await server.stop();

    const after = await launchWithProfile(profile);
    try {
      const guard = guardContext(after, server.origin);
      guard.expectServerGone();
      const page = await after.newPage();
      await page.goto(server.url);
      await untilRendered(page);
      expect(guard.problems).toEqual([]);
    } finally {
      await after.close();
    }
  });
});

it('takes the very first page over without reloading it', async () => {
  const app = await openApp({ hasWorkers: false, isStored: true });
  try {
    await untilOfflineReady(app.page);
    await untilNoWorkerComes(app.page);
    const arrival = await app.page.evaluate(
      () => (performance.getEntriesByType('navigation')[0] as PerformanceNavigationTiming).type,
    );
    expect(arrival).toBe('navigate');
    expect(app.guard.problems).toEqual([]);
  } finally {
    await app.close();
  }
});
