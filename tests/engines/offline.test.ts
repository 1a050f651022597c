import { rm } from 'node:fs/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { deriveVersion } from '../harness/derive-version';
import { ENGINES, type EnginePage } from '../harness/engines/engine-page';
import {
  eventually,
  fill,
  seen,
  tapButton,
  untilOfflineReady,
  untilRendered,
  waitFor,
} from '../harness/engines/engine-thumb';
import { type EngineApp, openInEngine } from '../harness/engines/open-engine';
import { openTile, readFigures } from '../harness/engines/read-figures';
import { untilDeskKept } from '../harness/until-kept';
import { untilNoWorkerComes } from '../harness/update-at-hand';

let next: string;
beforeAll(async () => {
  next = await deriveVersion('next');
});
afterAll(() => rm(next, { recursive: true, force: true }));

describe.each(ENGINES)('in %s', (engine) => {
  let app: EngineApp;
  let page: EnginePage;
  beforeAll(async () => {
    app = await openInEngine(engine);
    page = app.page;
    await untilOfflineReady(page);
  });
  afterAll(async () => {
    await app?.close();
  });
  const keptShot = async () => {
    await openTile(page, 'speed');
    await fill(page, 'Speed off the tip', '2.6');
    await tapButton(page, 'Close');
    await untilDeskKept(page, { shot: { speedMps: 2.6 } });
    return readFigures(page);
  };
  const version = () => page.evaluate(() => document.documentElement.dataset.version ?? 'this');
  const mark = () =>
    page.evaluate(() => {
      document.documentElement.dataset.marked = 'yes';
    });
  const isMarked = () => page.evaluate(() => document.documentElement.dataset.marked === 'yes');

  it('an update is offered, taken by a tap, loads the page once, and keeps what was there', async () => {
    const before = await keptShot();
    await mark();
    app.server.deploy(next);
    await page.evaluate(async () => {
      await (await navigator.serviceWorker.ready).update();
    });
    await waitFor(page, { css: 'button', name: 'Update now' });
    expect(await version()).toBe('this');
    expect(await isMarked()).toBe(true);
    await tapButton(page, 'Update now');
    // In between there is no page to ask.
    await eventually(() => version().catch(() => 'loading')).toBe('next');
    await untilRendered(page);
    expect(await isMarked()).toBe(false);
    await mark();
    await untilNoWorkerComes(page);
    expect(await isMarked()).toBe(true);
    expect(await seen(page, { css: 'button', name: 'Update now' })).toBe(false);
    await eventually(() => readFigures(page)).toEqual(before);
    expect(await page.problems()).toEqual([]);
  });

  it('everything then works with the server gone: a reload, and any place by its address', async () => {
    // Not by its state: WebKit may tell a page that loads just then of a worker activating for ever.
    expect(await page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
    const before = await readFigures(page);
    await app.server.stop();
    await page.reload();
    await eventually(() => readFigures(page)).toEqual(before);
    for (const [hash, shown] of [
      ['#choose', '.choose-place'],
      ['#kit/measure', '.trial-row'],
      ['#kit/backup', '.backup-part'],
    ] as const) {
      await app.goTo(hash);
      await waitFor(page, { css: shown });
    }
    expect(await page.problems()).toEqual([]);

    // In a document that stays nothing at all goes wrong.
    await page.open('about:blank');
    const told = (await page.problems()).length;
    await app.goTo('#shot');
    await eventually(() => readFigures(page)).toEqual(before);
    expect((await page.problems()).slice(told)).toEqual([]);
  });
});
