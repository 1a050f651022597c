import { describe, expect, it } from 'vitest';
import { runAxe } from '../harness/axe';
import { cutOffText, outOfSight, sidewaysFaults, smallTargets } from '../harness/layout-faults';
import { beginTrial, playAttempt, playEveryTrial } from '../harness/measure-at-table';
import { type OpenApp, openApp } from '../harness/open-app';
import { settle } from '../harness/read-shot';

/** What the thumb is for at any step; one of them is there. */
const PRIMARY = '.attempt-control > .button-main, .key-enter, .tap-pad';

async function scrolls(app: OpenApp): Promise<string[]> {
  return app.page.evaluate(() => {
    const place = document.querySelector('.kit-place');
    const over = (place?.scrollHeight ?? 0) - (place?.clientHeight ?? 0);
    return over > 1 ? [`${document.querySelector('h1')?.textContent}: ${over} px too high`] : [];
  });
}

const SIZES = [
  { width: 360, height: 640 },
  { width: 390, height: 844 },
  { width: 844, height: 390 },
  { width: 768, height: 1024 },
];

it('every step of every trial fits every screen, with its control in reach of a thumb', async () => {
  const app = await openApp({ hash: '#kit/measure' });
  const { page } = app;
  const faults: string[] = [];
  let steps = 0;
  await playEveryTrial(page, async (trial, step) => {
    for (const size of SIZES) {
      await page.setViewportSize(size);
      await settle(page);
      const found = [...(await sidewaysFaults(page)), ...(await smallTargets(page))];
      if (step !== 'result') {
        found.push(...(await scrolls(app)), ...(await outOfSight(page, [PRIMARY])));
      }
      faults.push(...found.map((fault) => `${trial} ${step} at ${size.width}: ${fault}`));
    }
    if (step !== 'result') steps++;
    await page.setViewportSize({ width: 390, height: 844 });
  });
  expect(faults).toEqual([]);
  expect(steps).toBe(3 + 4 + 4 + 3 + 3 + 2 + 3);
  expect(app.guard.problems).toEqual([]);
  await app.close();
});

it('axe finds nothing at any step in either theme, and nothing on the page once they are taken down', async () => {
  const app = await openApp({ hash: '#kit/measure' });
  const found: string[] = [];
  const look = async () => {
    for (const theme of ['light', 'dark']) {
      await app.page.evaluate((name) => {
        document.documentElement.dataset.theme = name;
      }, theme);
      await settle(app.page);
      found.push(...(await runAxe(app.page)).found);
    }
  };
  await playEveryTrial(app.page, look);
  await app.page.locator('.sureness-now').first().waitFor();
  await look();
  expect(found).toEqual([]);
  await app.close();
});

describe('with text twice as large', () => {
  it('loses nothing at any step', async () => {
    const app = await openApp({ hash: '#kit/measure' });
    const faults: string[] = [];
    await app.page.evaluate(() => document.documentElement.style.setProperty('font-size', '200%'));
    await playEveryTrial(app.page, async (trial, step) => {
      const found = [...(await sidewaysFaults(app.page)), ...(await cutOffText(app.page))];
      faults.push(...found.map((fault) => `${trial} ${step}: ${fault}`));
    });
    expect(faults).toEqual([]);
    await app.close();
  });
});

describe('the left-handed mirror', () => {
  it('turns the keypad’s sides over and leaves the drawing and the order of the digits alone', async () => {
    const app = await openApp({ hash: '#kit/measure' });
    const leftOf = async (selector: string) =>
      (await app.page.locator(selector).first().boundingBox())?.x ?? Number.NaN;
    await playAttempt(app.page, await beginTrial(app.page, 'Line'), async (step) => {
      if (step !== '3') return;
      const drawing = await app.page.locator('.trial-drawing').innerHTML();
      expect(await leftOf('.key-enter')).toBeGreaterThan(await leftOf('.key'));
      await app.page.evaluate(() => {
        document.documentElement.dataset.hand = 'left';
      });
      expect(await leftOf('.key-enter')).toBeLessThan(await leftOf('.key'));
      expect(await leftOf('.key >> nth=0')).toBeLessThan(await leftOf('.key >> nth=1'));
      expect(await app.page.locator('.trial-drawing').innerHTML()).toBe(drawing);
    });
    await app.close();
  });
});
