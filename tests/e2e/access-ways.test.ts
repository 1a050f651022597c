import { afterAll, beforeAll, expect, it } from 'vitest';
import { accessFaults } from '../harness/access-faults';
import { type OpenApp, openApp } from '../harness/open-app';
import { tap } from '../harness/thumb';
import { untilCompared } from '../harness/touch-table';

/** Ways compared once for all; then one that is looked at. */
let app: OpenApp;
beforeAll(async () => {
  app = await openApp({ hash: '#choose/ways' });
  await untilCompared(app.page);
});
afterAll(() => app.close());

it('draws the chances so that all can be read and reached', async () => {
  const map = app.page.getByRole('img', { name: /^How easy it is for most over side and speed/ });
  expect(await map.getAttribute('aria-label')).toMatch(
    /(left|right|no side), .*: (easy|fair|hard)/,
  );
  expect(await accessFaults(app.page)).toEqual([]);
});

it('draws the fan of a way so that all can be read and reached', async () => {
  await tap(app.page, app.page.locator('.way-row').first());
  await expect.poll(() => app.page.locator('.fan-path').count()).toBeGreaterThanOrEqual(3);
  await expect
    .poll(() => app.page.locator('.table-board svg').getAttribute('aria-label'))
    .toMatch(/Where the cue ball rests, in diamonds: true: /);
  expect(await accessFaults(app.page)).toEqual([]);
});

it('tells what is pressed from what is not in a reader’s own colours', async () => {
  const { page } = app;
  await page.emulateMedia({ forcedColors: 'active' });
  const looks = await page.locator('.mode-tab').evaluateAll((tabs) =>
    tabs.map((tab) => {
      const { backgroundColor } = getComputedStyle(tab);
      return { isPressed: tab.ariaPressed === 'true', look: backgroundColor };
    }),
  );
  const pressed = looks.filter(({ isPressed }) => isPressed).map(({ look }) => look);
  const others = looks.filter(({ isPressed }) => !isPressed).map(({ look }) => look);
  expect(pressed).toHaveLength(1);
  expect(others.length).toBeGreaterThan(1);
  expect(others).not.toContain(pressed[0]);
});
