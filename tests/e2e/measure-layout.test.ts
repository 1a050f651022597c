import { beforeAll, describe, expect, it } from 'vitest';
import { runAxe, runAxeOnColours, runAxeOnSizes } from '../harness/axe';
import { contrastFaults } from '../harness/drawing-contrast';
import { focusFaults } from '../harness/focus-faults';
import { cutOffText, outOfSight, sidewaysFaults, smallTargets } from '../harness/layout-faults';
import { playEveryTrial } from '../harness/measure-at-table';
import { type OpenApp, openApp } from '../harness/open-app';
import { settle } from '../harness/read-shot';
import { withLargeText, withSpreadText } from '../harness/reader-styles';
import { structureFaults } from '../harness/structure-faults';

/** What the thumb is for at any step; one of them is there. */
const PRIMARY = '.attempt-control > .button-main, .key-enter, .tap-pad';

async function scrolls(app: OpenApp): Promise<string[]> {
  return app.page.evaluate(() => {
    const place = document.querySelector('.kit-place');
    const over = (place?.scrollHeight ?? 0) - (place?.clientHeight ?? 0);
    return over > 1 ? [`${document.querySelector('h1')?.textContent}: ${over} px too high`] : [];
  });
}

/** The last of them is the one that all else is looked at in. */
const SIZES = [
  { width: 360, height: 640 },
  { width: 844, height: 390 },
  { width: 768, height: 1024 },
  { width: 390, height: 844 },
];

/** Everything looked for on one walk through all trials: walking takes as long as the balls roll. */
const faults = {
  fit: [] as string[],
  large: [] as string[],
  axe: [] as string[],
  readers: [] as string[],
};
let steps = 0;

async function lookAtSizes(app: OpenApp, step: string): Promise<void> {
  const { page } = app;
  for (const size of SIZES) {
    await page.setViewportSize(size);
    await settle(page);
    const found = [...(await sidewaysFaults(page)), ...(await smallTargets(page))];
    if (!step.endsWith('result')) {
      found.push(...(await scrolls(app)), ...(await outOfSight(page, [PRIMARY])));
    }
    faults.fit.push(...found.map((fault) => `${step} at ${size.width}: ${fault}`));
  }
}

async function lookAtLargeText({ page }: OpenApp, step: string): Promise<void> {
  const look = async () => {
    const found = [...(await sidewaysFaults(page)), ...(await cutOffText(page))];
    faults.large.push(...found.map((fault) => `${step}: ${fault}`));
  };
  await withLargeText(page, async () => {
    await look();
    if (hasAllKinds(step)) faults.axe.push(...(await runAxeOnSizes(page)).found);
  });
  await withSpreadText(page, look);
}

/** Steps of every kind: balls to place, a height to enter, time to tap, a landing to enter. */
const hasAllKinds = (step: string) => step.startsWith('curve');

/** Whether it shows what no step before it does: each trial has a drawing of its own. */
const isNew = (step: string) => hasAllKinds(step) || step.endsWith(' 1');

async function lookForReaders({ page }: OpenApp, step: string): Promise<void> {
  // What a result offers next may change until then, in the middle of a tour.
  await page.getByText('Working out what it tells…').waitFor({ state: 'hidden' });
  await settle(page);
  const found = [...(await structureFaults(page)), ...(await focusFaults(page))];
  if (isNew(step)) found.push(...(await contrastFaults(page)));
  faults.readers.push(...found.map((fault) => `${step}: ${fault}`));
}

async function lookWithAxe({ page }: OpenApp): Promise<void> {
  for (const [theme, look] of [
    ['light', runAxeOnColours],
    ['dark', runAxe],
  ] as const) {
    await page.evaluate((name) => {
      document.documentElement.dataset.theme = name;
    }, theme);
    await settle(page);
    faults.axe.push(...(await look(page)).found);
  }
}

/** Where the keypad of a line has its keys, and what is drawn above it, for either hand. */
const hands: Awaited<ReturnType<typeof keypadOf>>[] = [];

async function keypadOf({ page }: OpenApp) {
  const leftOf = async (selector: string) =>
    (await page.locator(selector).first().boundingBox())?.x ?? Number.NaN;
  return {
    enterX: await leftOf('.key-enter'),
    digitX: await leftOf('.key'),
    nextDigitX: await leftOf('.key >> nth=1'),
    drawing: await page.locator('.trial-drawing').innerHTML(),
  };
}

async function lookAtBothHands(app: OpenApp): Promise<void> {
  for (const hand of ['right', 'left', 'right']) {
    await app.page.evaluate((name) => {
      document.documentElement.dataset.hand = name;
    }, hand);
    hands.push(await keypadOf(app));
  }
}

describe('every step of every trial', () => {
  beforeAll(async () => {
    const app = await openApp({ hash: '#kit/measure' });
    await playEveryTrial(app.page, async (trial, step) => {
      if (step !== 'result') steps++;
      if (`${trial} ${step}` === 'line 3') await lookAtBothHands(app);
      await lookAtSizes(app, `${trial} ${step}`);
      await lookAtLargeText(app, `${trial} ${step}`);
      if (isNew(`${trial} ${step}`)) await lookWithAxe(app);
      await lookForReaders(app, `${trial} ${step}`);
    });
    await app.page.locator('.sureness-now').first().waitFor();
    await lookWithAxe(app);
    expect(app.guard.problems).toEqual([]);
    await app.close();
  });

  it('is come to', () => {
    expect(steps).toBe(3 + 4 + 4 + 3 + 3 + 2 + 3 + 3 + 3);
  });

  it('fits every screen, with its control in reach of a thumb', () => {
    expect(faults.fit).toEqual([]);
  });

  it('loses nothing with text twice as large, or spread out', () => {
    expect(faults.large).toEqual([]);
  });

  it('has nothing that axe finds in either theme, with large text, or once all is taken down', () => {
    expect(faults.axe).toEqual([]);
  });
});

describe('every step, for whoever reads or moves otherwise', () => {
  it('has landmarks and named drawings, is all reached by Tab, and draws nothing faint', () => {
    expect(faults.readers).toEqual([]);
  });
});

describe('the left-handed mirror', () => {
  it('turns the keypad’s sides over and leaves the drawing and the order of the digits alone', () => {
    const [right, left] = hands;
    expect(right?.enterX).toBeGreaterThan(right?.digitX ?? Number.NaN);
    expect(left?.enterX).toBeLessThan(left?.digitX ?? Number.NaN);
    expect(left?.digitX).toBeLessThan(left?.nextDigitX ?? Number.NaN);
    expect(left?.drawing).toBe(right?.drawing);
    expect(right?.drawing).toContain('<svg');
  });
});
