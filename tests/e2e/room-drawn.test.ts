import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { solveAim } from '../../src/engine/direct/solve-aim';
import { DEFAULT_KIT } from '../../src/engine/kit/kit';
import { DEFAULT_POCKET, DEFAULT_SHOT } from '../../src/store/default-desk';
import { easeWords } from '../../src/ui/chance-telling';
import { type OpenApp, openApp } from '../harness/open-app';
import {
  alongSpeeds,
  barOf,
  engineRoom,
  engineWindows,
  FAR_POCKET,
  LONG_SHOT,
  textOf,
  typeLongShot,
  untilAssessed,
} from '../harness/read-room';
import { openTile, tapButton } from '../harness/thumb';

let app: OpenApp;
beforeAll(async () => {
  app = await openApp();
});
afterAll(async () => {
  expect(app.guard.problems).toEqual([]);
  await app.close();
});

/** Where the drawing has the object ball's centre and radius, and the band of aims, px. */
async function drawing() {
  await untilAssessed(app.page);
  const number = async (selector: string, name: string) =>
    Number((await app.page.locator(`.shooter-diagram ${selector}`).getAttribute(name)) ?? '');
  const fromX = await number('.aim-band', 'x');
  return {
    cx: await number('.object-ball', 'cx'),
    r: await number('.object-ball', 'r'),
    fromX,
    toX: fromX + (await number('.aim-band', 'width')),
    aimX: await number('.aim-mark line', 'x1'),
  };
}

describe('the worked example', () => {
  const room = engineRoom(DEFAULT_SHOT, DEFAULT_POCKET);
  const windows = engineWindows(DEFAULT_SHOT, DEFAULT_POCKET);

  it('tells how often it goes and how sure its aim is', async () => {
    await untilAssessed(app.page);
    // What players about the middle of all would say of it (common practice, no source).
    expect(room.chance.share).toBeGreaterThan(0.5);
    expect(room.chance.share).toBeLessThan(0.75);
    expect(await textOf(app.page, '.why-chance')).toBe('fair for most');
    expect(easeWords(room.chanceOnKnownKit.share)).toBe('easy');
    const { ballRadiusM } = DEFAULT_KIT;
    const answer = solveAim(DEFAULT_SHOT, DEFAULT_KIT);
    if (!answer.ok) throw new Error(answer.reason);
    const toBallM = DEFAULT_SHOT.distanceM + 2 * ballRadiusM * Math.cos(DEFAULT_SHOT.cutRad);
    const sdM =
      toBallM * (Math.tan(answer.aimRad + room.certainty.aimSdRad) - Math.tan(answer.aimRad));
    expect(room.certainty.contributions[0]?.quantity).toBe('massRatio');
    expect(await textOf(app.page, '.why-certainty')).toBe(
      `sure to ±${Math.round(sdM * 1000)} mm: cue not measured (easy once it is)`,
    );
  });

  it('draws the aims that still go where they pass the object ball', async () => {
    const { low, high } = windows.aimRad;
    const { cx, r, fromX, toX, aimX } = await drawing();
    const pxPerM = r / DEFAULT_KIT.ballRadiusM;
    const reachM = 2 * DEFAULT_KIT.ballRadiusM;
    const passesAtX = (aimRad: number) => {
      const toBallM = DEFAULT_SHOT.distanceM + reachM * Math.cos(DEFAULT_SHOT.cutRad);
      return cx + pxPerM * (toBallM * Math.tan(aimRad) - reachM * Math.sin(DEFAULT_SHOT.cutRad));
    };
    expect(fromX).toBeCloseTo(passesAtX(low.value), 3);
    expect(toX).toBeCloseTo(passesAtX(high.value), 3);
    expect(fromX).toBeLessThan(aimX);
    expect(toX).toBeGreaterThan(aimX);
    const told = await app.page.locator('.shooter-diagram svg').getAttribute('aria-label');
    expect(told).toMatch(/aims go from \d+ mm left \(thin\) to \d+ mm left \(full\)$/);
  });

  it('draws each window under its tile as the engine finds it, and none where there is none', async () => {
    const { speedMps, side, elevationRad } = windows;
    const speed = await barOf(app.page, '[data-opens="speed"]');
    expect(speed[0]).toBeCloseTo(alongSpeeds(speedMps.low.value), 2);
    expect(speed[1]).toBeCloseTo(Math.min(1, alongSpeeds(speedMps.high.value)), 2);
    const tip = await barOf(app.page, '[data-opens="tip"]');
    expect(tip[0]).toBeCloseTo(side.low.value + 0.5, 2);
    expect(tip[1]).toBeCloseTo(side.high.value + 0.5, 2);
    const raised = await barOf(app.page, '[data-opens="raised"]');
    const usualRad = Math.PI / 6;
    expect(raised[0]).toBeCloseTo(elevationRad.low.value / usualRad, 2);
    expect(raised[1]).toBeCloseTo(elevationRad.high.value / usualRad, 2);
    for (const input of ['distance', 'cut', 'pocket']) {
      expect(await app.page.locator(`[data-opens="${input}"] .window-bar`).count()).toBe(0);
    }
  });

  it('has another mark where something else than a miss ends a window', async () => {
    const { page } = app;
    await typeLongShot(page);
    await untilAssessed(page);
    expect(await page.locator('[data-opens="speed"] .bar-wall').count()).toBe(2);
    await openTile(page, 'raised');
    await tapButton(page, '0°');
    await openTile(page, 'cut');
    await tapButton(page, 'full');
    await openTile(page, 'tip');
    await tapButton(page, 'Tip to the centre');
    await untilAssessed(page);
    const shot = { ...LONG_SHOT, cutRad: 0, side: 0, elevationRad: 0 };
    const straight = engineWindows(shot, FAR_POCKET);
    expect(straight.speedMps.low.endedBy).toBe('short');
    expect(straight.speedMps.high.endedBy).toBe('range');
    expect(straight.height.high.endedBy).toBe('miscue');
    const speed = page.locator('[data-opens="speed"]');
    expect(await speed.locator('.window-bar circle').count()).toBe(1);
    expect(await speed.locator('.bar-wall').count()).toBe(0);
    expect(await page.locator('.tip-number').nth(1).locator('circle').count()).toBe(2);
    for (let change = 0; change < 3; change++) await tapButton(page, /Undo/);
    await tapButton(page, 'Close');
    await untilAssessed(page);
    const { chance } = engineRoom(LONG_SHOT, FAR_POCKET);
    expect(await textOf(app.page, '.why-chance')).toBe(`${easeWords(chance.share)} for most`);
  });
});
