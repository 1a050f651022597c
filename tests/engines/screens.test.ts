import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ENGINES, type EnginePage, PHONE_SIZE } from '../harness/engines/engine-page';
import { settle, untilRendered, waitFor } from '../harness/engines/engine-thumb';
import { type EngineApp, openInEngine } from '../harness/engines/open-engine';
import { provokeProblems } from '../harness/engines/provoke-problems';
import { cutOffText, sidewaysFaults, smallTargets } from '../harness/layout-faults';
import { SCREENS } from '../harness/screens';

describe.each(ENGINES)('every screen in %s', (engine) => {
  let app: EngineApp;
  let page: EnginePage;
  beforeAll(async () => {
    // Not at the root, so that there is a page of the same origin without the app.
    app = await openInEngine(engine, { basePath: '/app/' });
    page = app.page;
  });
  afterAll(async () => {
    await app?.close();
  });

  it('fits a phone, cuts no text off, and has all in it large enough for a thumb', async () => {
    await page.openNarrow(app.server.url);
    await untilRendered(page);
    expect(await page.evaluate(() => innerWidth)).toBe(PHONE_SIZE.width);
    const faults: string[] = [];
    const titles = new Set<string>();
    for (const screen of SCREENS) {
      await page.evaluate((hash) => {
        location.hash = hash;
      }, screen);
      await settle(page);
      titles.add(await page.evaluate(() => document.querySelector('#app')?.textContent ?? ''));
      const found = [
        ...(await sidewaysFaults(page)),
        ...(await cutOffText(page)),
        ...(await smallTargets(page)),
      ];
      faults.push(...found.map((fault) => `${screen}: ${fault}`));
    }
    expect(faults).toEqual([]);
    expect(titles.size).toBe(SCREENS.length);
  });

  it('keeps each figure of the answer and its side on one line', async () => {
    await page.open(app.server.url);
    await untilRendered(page);
    await waitFor(page, { css: '.answer-others li' });
    const lines = await page.evaluate(() =>
      [...document.querySelectorAll('.answer-others li')].map((row) => {
        const { lineHeight } = getComputedStyle(row);
        return row.getBoundingClientRect().height / Number.parseFloat(lineHeight);
      }),
    );
    expect(lines.map(Math.round)).toEqual([1, 1, 1, 1]);
  });

  it('says nothing is wrong, and would say so', async () => {
    expect(await page.problems()).toEqual([]);
    await page.open(app.server.url);
    await page.evaluate(provokeProblems);
    await expect
      .poll(() => page.problems())
      .toEqual(
        expect.arrayContaining([
          'console error: invented',
          expect.stringContaining('thrown for a test'),
          expect.stringContaining('elsewhere.invalid'),
        ]),
      );
  });
});
