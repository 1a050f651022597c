import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { DEFAULT_POCKET, DEFAULT_SHOT } from '../../src/store/default-desk';
import { chanceWords } from '../../src/ui/shot/room-words';
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
    expect(await page.locator('.why-button.is-stale').count()).toBe(1);
    await away.fill('0.3');
    await away.blur();
    await untilAssessed(page);
    const { windows, chance } = engineRoom(DEFAULT_SHOT, { distanceM: 0.3, mouthM: 0.131 }, 'club');
    expect(await textOf(app.page, '.why-chance')).toBe(`goes ${chanceWords(chance.share)}`);
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
  it('open by a tap on the chance, and name what is not measured', async () => {
    const { page } = app;
    await untilAssessed(page);
    await tapButton(page, /goes about/);
    const reasons = await textOf(app.page, '.why-room');
    const [most] = engineRoom(DEFAULT_SHOT, DEFAULT_POCKET, 'club').certainty.contributions;
    const sdDeg = degreesOf(most?.aimSdRad ?? Number.NaN);
    expect(reasons).toContain(`cue’s deflection±${sdDeg.toFixed(2)}°`);
    expect(reasons).toContain('not measured');
    expect(reasons).toContain('One standard deviation');
    expect(reasons).toContain('If your kit were known');
    expect(reasons).toContain('no jaws, no rails');
  });

  it('tell the chance of each player there is to choose, on this kit and if it were known', async () => {
    const { page } = app;
    for (const player of ['steady', 'beginner'] as const) {
      await tapButton(page, player);
      await untilAssessed(page);
      const pocket = { distanceM: 0.79375, mouthM: 0.131 };
      const { chance, chanceOnKnownKit } = engineRoom(DEFAULT_SHOT, pocket, player);
      const told = [...(await textOf(app.page, '.why-room')).matchAll(/\((\d+) ± \d+ %\)/g)].map(
        ([, figure]) => Number(figure),
      );
      expect(told).toEqual([
        Math.round(chance.share * 100),
        Math.round(chanceOnKnownKit.share * 100),
      ]);
    }
    expect(await textOf(app.page, '.player-scatter')).toContain('An invented player, not you yet.');
    await tapButton(page, 'Done');
  });

  it('keep the player chosen, under Kit too', async () => {
    const { page } = app;
    await page.goto(`${app.server.url}#kit`);
    const chosen = page.locator('.player-choice [aria-pressed="true"]');
    await expect.poll(() => chosen.textContent()).toBe('beginner');
    await tapButton(page, 'club');
    await expect.poll(() => textOf(app.page, '.player-scatter')).toContain('±0.13°');
    await page.goto(`${app.server.url}#shot`);
  });
});
