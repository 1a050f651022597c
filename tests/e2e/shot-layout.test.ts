import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  cutOffText,
  endsUnderNavigation,
  outOfSight,
  sidewaysFaults,
  smallTargets,
} from '../harness/layout-faults';
import { type OpenApp, openApp, untilRendered } from '../harness/open-app';
import { changeRawRow } from '../harness/raw-database';
import { untilAssessed, untilTold } from '../harness/read-room';
import { settle } from '../harness/read-shot';
import { withLargeText, withSpreadText } from '../harness/reader-styles';
import { SCREENS, SIZES } from '../harness/screens';
import { openTile, tapButton } from '../harness/thumb';
import { untilKept } from '../harness/until-kept';

let app: OpenApp;
beforeAll(async () => {
  app = await openApp();
});
afterAll(() => app.close());

async function show(screen: string): Promise<void> {
  await app.page.goto(`${app.server.url}#${screen}`);
  await untilRendered(app.page);
  await settle(app.page);
  await untilTold(app.page, screen);
}

/** What a thumb goes to first. */
const PRIMARY = '.button-main, .button-primary, .hold-button, .input-tile, .nav-bar a';
const PRIMARY_PX = 48;
/** Held in one hand. */
const PHONES = [360, 390];
/** Where text may be twice as large, or spread out. */
const FOR_READERS = [320, 390];

async function expectNothingLost(): Promise<void> {
  expect(await sidewaysFaults(app.page)).toEqual([]);
  expect(await cutOffText(app.page)).toEqual([]);
}

describe.each(SIZES)('on a screen of $width by $height', (size) => {
  beforeAll(() => app.page.setViewportSize(size));

  it.each(SCREENS)('%s fits, has targets for a thumb, and loses no text', async (screen) => {
    await show(screen);
    expect(await sidewaysFaults(app.page)).toEqual([]);
    expect(await smallTargets(app.page)).toEqual([]);
    if (PHONES.includes(size.width)) {
      expect(await smallTargets(app.page, PRIMARY, PRIMARY_PX)).toEqual([]);
    }
    if (FOR_READERS.includes(size.width)) {
      await withLargeText(app.page, expectNothingLost);
      await withSpreadText(app.page, expectNothingLost);
    }
  });
});

const INPUTS = ['distance', 'cut', 'pocket', 'speed', 'tip', 'raised'] as const;

describe.each([
  { width: 360, height: 640 },
  { width: 390, height: 844 },
])('under the thumb, $width by $height', (size) => {
  beforeAll(() => app.page.setViewportSize(size));

  it.each(['shot', ...INPUTS.map((input) => `shot/${input}`)])(
    'what %s is asked by lies in the lower 60 % of the screen',
    async (screen) => {
      await show(screen);
      const tops = await app.page
        .locator('.input-tile, #input-control :is(button, input), .nav-bar a')
        .evaluateAll((all) =>
          all
            .filter((one) => one.checkVisibility())
            .map((one) => one.getBoundingClientRect().top / innerHeight),
        );
      expect(tops.length).toBeGreaterThan(6);
      expect(Math.min(...tops)).toBeGreaterThanOrEqual(0.4);
    },
  );
});

const OUTCOME = '.outcome button';
const OUTCOME_PX = 56;

describe.each([
  { width: 360, height: 640 },
  { width: 390, height: 844 },
])('after a shot, $width by $height', (size) => {
  beforeAll(() => app.page.setViewportSize(size));

  it.each(['shot/after', 'log/test/new'])(
    'on %s what became of it is said by the thumb, without scrolling',
    async (screen) => {
      await show(screen);
      await app.page.locator(OUTCOME).first().waitFor();
      expect(await smallTargets(app.page, OUTCOME, OUTCOME_PX)).toEqual([]);
      const ends = await app.page.locator(OUTCOME).evaluateAll((all) =>
        all.map((one) => {
          const { top, bottom } = one.getBoundingClientRect();
          return { top: top / innerHeight, bottom: bottom / innerHeight };
        }),
      );
      expect(ends).toHaveLength(6);
      expect(Math.min(...ends.map(({ top }) => top))).toBeGreaterThanOrEqual(0.4);
      expect(Math.max(...ends.map(({ bottom }) => bottom))).toBeLessThanOrEqual(1);
    },
  );
});

const PICTURE_AND_ANSWER = ['.shooter-diagram', '.overhead-strip', '.answer', '.why-button'];

describe.each([
  { width: 360, height: 640 },
  { width: 390, height: 844 },
  { width: 844, height: 390 },
])('without scrolling, $width by $height', (size) => {
  beforeAll(() => app.page.setViewportSize(size));

  it('shows the picture, the answer, the six tiles and the way elsewhere', async () => {
    await show('shot');
    const tiles = INPUTS.map((input) => `[data-opens="${input}"]`);
    const wanted = ['.kit-strip', ...PICTURE_AND_ANSWER, ...tiles, '.nav-bar'];
    expect(await outOfSight(app.page, wanted)).toEqual([]);
  });

  it.each(INPUTS)('shows the picture and the answer over the control of %s', async (input) => {
    await show('shot');
    await openTile(app.page, input);
    await untilAssessed(app.page);
    expect(await outOfSight(app.page, [...PICTURE_AND_ANSWER, '#input-control'])).toEqual([]);
    const steppers = await app.page.locator('.hold-button').all();
    expect(steppers.length).toBeGreaterThanOrEqual(2);
    for (const stepper of steppers) {
      const box = await stepper.boundingBox();
      expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(56);
    }
    await tapButton(app.page, 'Close');
  });
});

describe.each([
  { width: 320, height: 640 },
  { width: 360, height: 640 },
  { width: 390, height: 844 },
])('the way elsewhere, $width by $height', (size) => {
  beforeAll(() => app.page.setViewportSize(size));

  it.each(SCREENS)('is in reach on %s, and nothing ends under it', async (screen) => {
    await show(screen);
    const isOnScreen = await app.page.locator('.nav-bar').isVisible();
    if (isOnScreen) expect(await outOfSight(app.page, ['.nav-bar'])).toEqual([]);
    expect(await endsUnderNavigation(app.page)).toEqual([]);
    if (isOnScreen) expect(await outOfSight(app.page, ['.nav-bar'])).toEqual([]);
  });

  it('is not scrolled off by what is there for ears alone, however far down', async () => {
    await show('choose/play');
    await tapButton(app.page, 'pick…');
    await app.page.getByText('Balls that may be hit first').waitFor({ state: 'attached' });
    const longer = () =>
      app.page.evaluate(() => document.documentElement.scrollHeight - innerHeight);
    expect(await longer()).toBe(0);
    await tapButton(app.page, 'any');
  });

  it('lays the table of the level test upright, its counts large enough to read', async () => {
    await show('log/test/new');
    const bed = await app.page.locator('.test-table .plain-bed').boundingBox();
    expect(bed?.height).toBeGreaterThan(1.5 * (bed?.width ?? Number.NaN));
    const sizes = await app.page
      .locator('.test-count')
      .evaluateAll((all) => all.map((one) => Number.parseFloat(getComputedStyle(one).fontSize)));
    expect(sizes).toHaveLength(4);
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(12);
  });
});

describe('with a notice that the laws have changed, 360 by 640', () => {
  it('keeps the way elsewhere on the screen, and what is asked within a scroll', async () => {
    await app.page.setViewportSize({ width: 360, height: 640 });
    await show('kit/preferences');
    await tapButton(app.page, 'left');
    await tapButton(app.page, 'right');
    await untilKept(app.page, 'desk', {});
    await changeRawRow(app.page, 'desk', { law: 1 });
    await app.page.reload();
    await show('shot');
    await app.page.getByText(/Cushions now give back less/).waitFor();
    expect(await outOfSight(app.page, ['.news-line', '.nav-bar', '.why-button'])).toEqual([]);
    expect(await endsUnderNavigation(app.page)).toEqual([]);
    await tapButton(app.page, 'OK');
  });
});

describe('the left-handed mirror', () => {
  beforeAll(() => app.page.setViewportSize({ width: 390, height: 844 }));
  afterAll(async () => {
    await show('kit/preferences');
    await tapButton(app.page, 'right');
  });

  const pictures = () =>
    app.page
      .locator('.shooter-diagram svg, .overhead-strip svg')
      .evaluateAll((svgs) => svgs.map((svg) => svg.outerHTML));
  const leftOf = async (selector: string) => {
    const box = await app.page.locator(selector).first().boundingBox();
    return box?.x ?? Number.NaN;
  };

  it('turns tiles and buttons over, and leaves the drawings alone', async () => {
    await show('shot');
    const before = {
      pictures: await pictures(),
      distance: await leftOf('[data-opens="distance"]'),
      pocket: await leftOf('[data-opens="pocket"]'),
      why: await leftOf('[data-opens="why"]'),
    };
    expect(before.distance).toBeLessThan(before.pocket);
    await show('kit/preferences');
    await tapButton(app.page, 'left');
    await show('shot');
    expect(await leftOf('[data-opens="distance"]')).toBeGreaterThan(
      await leftOf('[data-opens="pocket"]'),
    );
    expect(await leftOf('[data-opens="why"]')).toBeLessThan(before.why);
    expect(await pictures()).toEqual(before.pictures);
  });

  it('keeps left of the cue ball’s face on the left', async () => {
    await openTile(app.page, 'tip');
    const left = await leftOf('.tip-pad-left');
    expect(left).toBeLessThan(await leftOf('.tip-pad-right'));
    const contact = await app.page.locator('.tip-face-contact').first().boundingBox();
    const face = await app.page.locator('.tip-face').boundingBox();
    const middle = (face?.x ?? 0) + (face?.width ?? 0) / 2;
    expect(contact?.x).toBeLessThan(middle);
  });

  it('keeps what is read in its order: places, back and title, undo and redo', async () => {
    const order = async (...selectors: string[]) => {
      const lefts = await Promise.all(selectors.map(leftOf));
      return lefts.every((left, i) => i === 0 || left > (lefts[i - 1] ?? Number.NaN));
    };
    await show('kit/about');
    const places = ['shot', 'choose', 'kit', 'log'].map((place) => `.nav-bar a[href^="#${place}"]`);
    expect(await order(...places)).toBe(true);
    expect(await order('.panel-header .button', '.panel-header h1')).toBe(true);
    await show('choose');
    expect(await order('[aria-label="Undo"]', '[aria-label="Redo"]', '.choose-name')).toBe(true);
    await show('shot');
    expect(await order('[aria-label="Undo"]', '[aria-label="Redo"]')).toBe(true);
    await show('shot/why');
    expect(await order('.why-header h2', '.why-header .button')).toBe(true);
  });

  it('puts the controls on the left of a phone lying down', async () => {
    await app.page.setViewportSize({ width: 844, height: 390 });
    await show('shot');
    expect(await leftOf('.input-tiles')).toBeLessThan(await leftOf('.shooter-diagram'));
    await app.page.setViewportSize({ width: 390, height: 844 });
  });
});
