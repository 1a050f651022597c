import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runAxe } from '../harness/axe';
import { outOfSight, sidewaysFaults, smallTargets } from '../harness/layout-faults';
import { beginTrial, playAttempt } from '../harness/measure-at-table';
import { type OpenApp, openApp, untilRendered } from '../harness/open-app';
import { settle } from '../harness/read-shot';
import { tapButton } from '../harness/thumb';

// The form in which it signs, from memory; versions are arbitrary.
const IPHONE =
  'Mozilla/5.0 (iPhone; CPU iPhone OS 18_5 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/18.5 Mobile/15E148 Safari/604.1';

async function show(app: OpenApp, screen: string): Promise<void> {
  await app.page.goto(`${app.server.url}#${screen}`);
  await untilRendered(app.page);
  await settle(app.page);
}
const text = async ({ page }: OpenApp) => (await page.locator('#app').textContent()) ?? '';

describe('in Safari on an iPhone', () => {
  let app: OpenApp;
  beforeAll(async () => {
    app = await openApp({ hash: '#kit/about', context: { userAgent: IPHONE } });
  });
  afterAll(() => app.close());

  it('tells in About how to install, that it begins empty there, and leads to a backup', async () => {
    expect(await text(app)).toMatch(/begins empty.*seven days.*Share.*Add to Home Screen/);
    await tapButton(app.page, 'Save a backup first');
    await expect.poll(() => app.page.locator('h1').textContent()).toBe('Backup');
  });

  it('speaks of it once something is measured, and never again when told so', async () => {
    await show(app, 'kit/measure');
    const hint = app.page.locator('.install-hint');
    expect(await hint.count()).toBe(0);
    await playAttempt(app.page, await beginTrial(app.page, 'Pivot'));
    await tapButton(app.page, 'To all trials');
    await hint.waitFor();
    expect((await runAxe(app.page)).found).toEqual([]);
    expect(await smallTargets(app.page)).toEqual([]);
    await tapButton(app.page, 'Not now');
    expect(await hint.count()).toBe(0);
    await app.page.reload();
    await app.page.locator('.sureness-now').first().waitFor();
    expect(await hint.count()).toBe(0);
    expect(app.guard.problems).toEqual([]);
  });
});

describe('from the home screen', () => {
  let app: OpenApp;
  beforeAll(async () => {
    app = await openApp({
      hasWorkers: false,
      context: { userAgent: IPHONE, viewport: { width: 360, height: 640 } },
    });
    // What an iPhone says there; Chromium has no such place.
    await app.context.addInitScript(() => {
      Object.defineProperty(navigator, 'standalone', { value: true });
    });
    await app.page.reload();
    await untilRendered(app.page);
  });
  afterAll(() => app.close());

  it('offers at first to bring a backup in, and leaves room for the answer', async () => {
    const first = app.page.locator('.fresh-start');
    expect(await first.textContent()).toContain('Nothing of yours is here yet.');
    expect(await sidewaysFaults(app.page)).toEqual([]);
    expect(await smallTargets(app.page)).toEqual([]);
    expect(await outOfSight(app.page, ['.fresh-start', '.answer'])).toEqual([]);
    expect((await runAxe(app.page)).found).toEqual([]);
    await tapButton(app.page, 'Bring a backup in');
    await expect.poll(() => app.page.locator('h1').textContent()).toBe('Backup');
  });

  it('says nothing of installing', async () => {
    await show(app, 'kit/about');
    expect(await text(app)).toContain('Words and lines');
    expect(await text(app)).not.toContain('Have it as an app');
  });

  it('does not ask again once it is to start afresh', async () => {
    await show(app, 'shot');
    await tapButton(app.page, 'Start afresh');
    await app.page.reload();
    await untilRendered(app.page);
    expect(await app.page.locator('.fresh-start').count()).toBe(0);
  });
});

it('leaves the browser’s own question until it is wanted', async () => {
  const app = await openApp({ hasWorkers: false, hash: '#kit/about' });
  const asked = await app.page.evaluate(() => {
    const offer = new Event('beforeinstallprompt', { cancelable: true });
    Object.assign(offer, {
      prompt: async () => {
        document.title = 'asked';
      },
    });
    dispatchEvent(offer);
    return { isHeldBack: offer.defaultPrevented, title: document.title };
  });
  expect(asked).toEqual({ isHeldBack: true, title: 'About, Kit, Leeway' });
  await tapButton(app.page, 'Install it');
  await expect.poll(() => app.page.title()).toBe('asked');
  await app.close();
});
