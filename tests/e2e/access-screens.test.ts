import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { contrastFaults } from '../harness/drawing-contrast';
import { focusFaults } from '../harness/focus-faults';
import { type OpenApp, openApp, untilRendered } from '../harness/open-app';
import { untilTold } from '../harness/read-room';
import { settle } from '../harness/read-shot';
import { SCREENS } from '../harness/screens';
import { motionFaults, structureFaults } from '../harness/structure-faults';

/** What is looked for, and what finds it. */
const CRITERIA = {
  'has one heading of the first rank, landmarks, named drawings, a language and a title':
    structureFaults,
  'moves nothing by itself for whoever asks for that': motionFaults,
  'is all reached by Tab, with a ring that lies under nothing, and lets go of the focus':
    focusFaults,
  'draws nothing fainter than 3:1, in both themes, in forced colours and with more contrast':
    contrastFaults,
} as const;

let app: OpenApp;
beforeAll(async () => {
  app = await openApp({
    context: { viewport: { width: 360, height: 640 }, reducedMotion: 'reduce' },
  });
});
afterAll(() => app.close());

/** Where something opens, and what opens it. */
const OPENERS = [
  ['shot', 'cut'],
  ['shot', 'why'],
  ['shot', 'after'],
  ['choose', 'zone'],
  ['choose', 'positions'],
  ['kit', 'cues'],
  ['kit', 'measure'],
  ['kit', 'backup'],
  ['kit', 'about'],
  ['log', 'test'],
] as const;

it.each(OPENERS)(
  'in %s, Escape closes %s and the focus is back on what opened it',
  async (...at) => {
    const [place, panel] = at;
    const { page, server } = app;
    await page.goto(`${server.url}#${place}`);
    await page.locator(`[data-opens="${panel}"]`).first().focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => page.url()).toContain(`#${place}/${panel}`);
    await settle(page);
    await page.keyboard.press('Escape');
    await expect.poll(() => page.url()).toMatch(new RegExp(`#${place}$`));
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute('data-opens')))
      .toBe(panel);
  },
);

describe.each(SCREENS)('%s', (screen) => {
  beforeAll(async () => {
    await app.page.goto(`${app.server.url}#${screen}`);
    await untilRendered(app.page);
    await settle(app.page);
    await untilTold(app.page, screen);
  });

  it.each(Object.entries(CRITERIA))('%s', async (_, faults) => {
    expect(await faults(app.page)).toEqual([]);
  });
});
