import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import { type OpenApp, openApp } from '../harness/open-app';
import { readAnswer, readTiles, settle } from '../harness/read-shot';

let app: OpenApp;
beforeAll(async () => {
  app = await openApp({ hasWorkers: false });
});
afterEach(async () => {
  await app.page.keyboard.press('Escape');
  await app.page.locator('#input-control').waitFor({ state: 'detached' });
});
afterAll(() => app.close());

/** The accessible name of what has the focus, or its tag. */
const focused = () =>
  app.page.evaluate(() => {
    const element = document.activeElement;
    return element?.getAttribute('aria-label') ?? element?.textContent ?? 'nothing';
  });

/** Presses Tab until the focus is on something of that name. */
async function tabTo(name: RegExp): Promise<void> {
  for (let i = 0; i < 60; i++) {
    if (name.test(await focused())) return;
    await app.page.keyboard.press('Tab');
  }
  throw new Error(`Tab never came to ${name}`);
}

it('takes a whole shot without a finger', async () => {
  const { page } = app;
  const before = await readAnswer(page);
  await tabTo(/^Cut \d/);
  await page.keyboard.press('Enter');
  await tabTo(/^goes . left$/);
  await page.keyboard.press('Space');
  await tabTo(/^Thinner/);
  await page.keyboard.press('Enter');
  await page.keyboard.press('Space');
  await settle(page);
  const tiles = await readTiles(page);
  expect(tiles.cut).toContain('26');
  expect(tiles.cut).toContain('left');
  expect(await readAnswer(page)).not.toEqual(before);
});

it('moves a slider by its arrows and says where it stands', async () => {
  const { page } = app;
  await tabTo(/^Speed \d/);
  await page.keyboard.press('Enter');
  await tabTo(/slider$/);
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  await settle(page);
  expect((await readTiles(page)).speed).toContain('2.0');
  const slider = page.getByRole('slider');
  expect(await slider.getAttribute('aria-valuetext')).toBe('2.0 metres a second');
});

it('moves the tip over the cue ball’s face by all four arrows, and says where it is', async () => {
  const { page } = app;
  await tabTo(/^Tip [\d⅛¼⅜½]/);
  await page.keyboard.press('Enter');
  await tabTo(/face$/);
  const face = page.getByRole('slider', { name: 'The tip on the cue ball’s face' });
  const told = () => face.getAttribute('aria-valuetext');
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Shift+ArrowUp');
  await settle(page);
  // From an eighth of a radius, 0.37 tips, to the left to the next multiple of an eighth of a tip.
  // A tip is 13 mm of the axis, of which the ball and the tip's dome make 38.075 a radius.
  expect(Number(await face.getAttribute('aria-valuenow'))).toBeCloseTo((-0.25 * 13) / 38.075, 9);
  // From the middle by a short step of an eighth to the next multiple of a long one, a half.
  await expect.poll(told).toBe('¼ tip left, ½ tip high; the miscue limit is 1½ tips out');
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('ArrowDown');
  await expect.poll(told).toContain('⅜ tip left, ⅜ tip high');
});

it('closes a control with Escape and leaves the focus where it was opened', async () => {
  const { page } = app;
  await tabTo(/^Tip [\d⅛¼⅜½]/);
  await page.keyboard.press('Enter');
  await page.locator('#input-control').waitFor();
  await tabTo(/^Tip left/);
  await page.keyboard.press('Enter');
  await page.keyboard.press('Escape');
  await page.locator('#input-control').waitFor({ state: 'detached' });
  await expect.poll(focused).toMatch(/^Tip/);
});

it('shows where the focus is, under nothing', async () => {
  const { page } = app;
  const hidden: string[] = [];
  const seen = new Set<string>();
  for (let i = 0; i < 14; i++) {
    await page.keyboard.press('Tab');
    const at = await page.evaluate(() => {
      const element = document.activeElement;
      if (!(element instanceof HTMLElement) || element === document.body) return null;
      const { x, y, width, height } = element.getBoundingClientRect();
      const top = document.elementFromPoint(x + width / 2, y + height / 2);
      const ring = Number.parseFloat(getComputedStyle(element).outlineWidth);
      return { name: element.textContent ?? '', ring, isOnTop: element.contains(top) };
    });
    if (!at) continue;
    seen.add(at.name);
    if (at.ring < 2 || !at.isOnTop) hidden.push(at.name);
  }
  expect(seen.size).toBeGreaterThanOrEqual(10);
  expect(hidden).toEqual([]);
});
