import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { DEFAULT_POCKET, DEFAULT_SHOT } from '../../src/store/default-desk';
import { easeWords } from '../../src/ui/chance-telling';
import { degreesOf } from '../../src/units/angle-degrees';
import { type OpenApp, openApp, untilRendered } from '../harness/open-app';
import { alongSpeeds, barOf, engineRoom, textOf, untilAssessed } from '../harness/read-room';
import { readTiles } from '../harness/read-shot';
import { openTile, tapButton } from '../harness/thumb';
import { untilDeskKept } from '../harness/until-kept';

let app: OpenApp;
beforeAll(async () => {
  app = await openApp();
});
afterAll(async () => {
  expect(app.guard.problems).toEqual([]);
  await app.close();
});

describe('the pocket', () => {
  it('is set by thumb, and the chance is the engine’s for it', async () => {
    const { page } = app;
    // Only what was told once can be greyed.
    await untilAssessed(page);
    await openTile(page, 'pocket');
    await tapButton(page, 'side 128');
    for (let press = 0; press < 3; press++) await tapButton(page, 'Mouth wider');
    for (let press = 0; press < 5; press++) await tapButton(page, 'Pocket nearer');
    const away = page.getByRole('textbox', { name: 'Distance to the pocket' });
    expect(await away.inputValue()).toBe('0.45');
    await away.fill('30 cm');
    expect(await textOf(app.page, '.field-problem')).toContain('figures');
    expect(await page.locator('.answer-meaning.is-stale').count()).toBe(1);
    await away.fill('0.3');
    await away.blur();
    await untilAssessed(page);
    const { windows, chance } = engineRoom(DEFAULT_SHOT, { distanceM: 0.3, mouthM: 0.131 });
    expect(await textOf(app.page, '.why-chance')).toBe(`${easeWords(chance.share)} for most`);
    await tapButton(page, 'Close');
    const speed = await barOf(page, '[data-opens="speed"]');
    expect(speed[0]).toBeCloseTo(alongSpeeds(windows?.speedMps.low.value ?? Number.NaN), 2);
    expect((await readTiles(page)).pocket).toMatch(/0\.30.*mouth 131 mm/);
  });

  it('is still there after a reload', async () => {
    await untilDeskKept(app.page, { pocket: { distanceM: 0.3, mouthM: 0.131 } });
    await app.page.reload();
    await untilRendered(app.page);
    expect((await readTiles(app.page)).pocket).toMatch(/0\.30.*mouth 131 mm/);
  });

  it('is told in diamonds by those who count so', async () => {
    const { page } = app;
    await openTile(page, 'pocket');
    await page.getByRole('combobox', { name: 'Unit of distance' }).selectOption('diamonds');
    const away = page.getByRole('textbox', { name: 'Distance to the pocket' });
    await away.fill('2 1/2');
    await away.blur();
    // Of a nine-foot table, 2.54 m from nose to nose.
    await page.getByRole('combobox', { name: 'Unit of distance' }).selectOption('m');
    await expect.poll(() => away.inputValue()).toBe('0.79');
    await tapButton(page, 'Close');
  });
});

describe('the reasons', () => {
  it('open by a tap on Why, and name what is not measured', async () => {
    const { page } = app;
    await untilAssessed(page);
    await tapButton(page, 'Why');
    const reasons = await textOf(app.page, '.why-room');
    const [most] = engineRoom(DEFAULT_SHOT, DEFAULT_POCKET).certainty.contributions;
    const sdDeg = degreesOf(most?.aimSdRad ?? Number.NaN);
    expect(reasons).toContain(`cue’s squirt±${sdDeg.toFixed(2)}°`);
    expect(reasons).toContain('not measured');
    expect(reasons).toContain('One standard deviation');
    expect(reasons).toContain('If your kit were known');
    expect(reasons).toContain('no jaws, no rails');
  });

  it('tell in a word how hard it is for most, and no figure, on this kit and if it were known', async () => {
    const pocket = { distanceM: 0.79375, mouthM: 0.131 };
    const { chance, chanceOnKnownKit } = engineRoom(DEFAULT_SHOT, pocket);
    await untilAssessed(app.page);
    const told = await app.page.locator('.why-list b').allTextContents();
    expect(told.filter((words) => /^(easy|fair|hard)$/.test(words))).toEqual([
      easeWords(chance.share),
      easeWords(chanceOnKnownKit.share),
    ]);
    expect(await textOf(app.page, '.why-room')).not.toMatch(/in 10|± \d+ %/);
    await tapButton(app.page, 'Done');
  });
});
