import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type AxeReport, runAxe, runAxeOnColours, runAxeOnSizes } from '../harness/axe';
import { type OpenApp, openApp, untilRendered } from '../harness/open-app';
import { untilTold } from '../harness/read-room';
import { settle } from '../harness/read-shot';
import { withLargeText } from '../harness/reader-styles';
import { SCREENS, THEMES } from '../harness/screens';
import { openTile, tapAction, tapButton } from '../harness/thumb';

/** All of it in one theme, and there what larger text may spoil; in the other its colours. */
const LOOKS = {
  dark: { look: runAxe, leastRules: 8, isLarge: true },
  light: { look: runAxeOnColours, leastRules: 0, isLarge: false },
};

describe.each(THEMES)('in the %s theme', (theme) => {
  const { look, leastRules, isLarge } = LOOKS[theme];
  let app: OpenApp;
  beforeAll(async () => {
    app = await openApp({ hash: '#kit/preferences' });
    await tapButton(app.page, theme);
    await app.page.waitForFunction(
      (name) => document.documentElement.dataset.theme === name,
      theme,
    );
  });
  afterAll(() => app.close());

  async function findNothing(
    looking: (page: Page) => Promise<AxeReport> = look,
    least = leastRules,
  ): Promise<void> {
    await settle(app.page);
    const { found, rulesPassed } = await looking(app.page);
    expect(found).toEqual([]);
    expect(rulesPassed).toBeGreaterThan(least);
  }

  it.each(SCREENS)('axe finds nothing on %s', async (screen) => {
    await app.page.goto(`${app.server.url}#${screen}`);
    await untilRendered(app.page);
    await untilTold(app.page, screen);
    await findNothing();
    if (isLarge) await withLargeText(app.page, () => findNothing(runAxeOnSizes, 0));
  });

  it('axe finds nothing beside a bad number and a refusal', async () => {
    const { page } = app;
    await page.goto(`${app.server.url}#shot`);
    await openTile(page, 'speed');
    const field = page.getByRole('textbox', { name: 'Speed off the tip' });
    await field.fill('x');
    await findNothing();
    await field.fill('0.1');
    await findNothing();
    await field.fill('1.8');
  });

  it('axe finds nothing with warnings, a held shot and a deleted cue', async () => {
    const { page } = app;
    await tapButton(page, 'Hold');
    await openTile(page, 'raised');
    await tapButton(page, '30°');
    await findNothing();
    await page.goto(`${app.server.url}#kit/cues`);
    await tapAction(page, 'Delete', 'Stiff cue');
    await findNothing();
  });
});
