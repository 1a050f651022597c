import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { countWork } from '../harness/count-work';
import { holdClock } from '../harness/held-clock';
import { type OpenApp, openApp } from '../harness/open-app';
import {
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
  await typeLongShot(app.page);
});
afterAll(async () => {
  expect(app.guard.problems).toEqual([]);
  await app.close();
});

describe('the room while the shot changes', () => {
  it('moves with the speed, in the bar and in words', async () => {
    const { page } = app;
    const before = await barOf(app.page, '[data-opens="speed"]');
    await openTile(page, 'speed');
    expect(await textOf(app.page, '.window-words')).toBe('goes from 1.4 (thin) to 2.1 m/s (full)');
    await tapButton(page, 'firm');
    const after = await barOf(app.page, '.value-slider');
    expect(after[0]).toBeGreaterThan(before[0]);
    const { speedMps } = engineWindows({ ...LONG_SHOT, speedMps: 2.5 }, FAR_POCKET);
    const told = /from ([\d.]+) \(thin\) to ([\d.]+) m\/s \(full\)/.exec(
      await textOf(app.page, '.window-words'),
    );
    expect(Number(told?.[1])).toBeCloseTo(speedMps.low.value, 1);
    expect(Number(told?.[2])).toBeCloseTo(speedMps.high.value, 1);
    await tapButton(page, /Undo/);
    await tapButton(page, 'Close');
  });

  it('is greyed, with dots, until it is that of the answer on screen', async () => {
    const { page } = app;
    await untilAssessed(page);
    await openTile(page, 'distance');
    // The look and the change in one go: the assessment waits for a moment's rest.
    const during = await page.evaluate(async () => {
      const button = [...document.querySelectorAll('button')].find(
        (candidate) => candidate.textContent === '1.50',
      );
      button?.click();
      await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
      const why = document.querySelector('.answer-meaning');
      return { classes: why?.className, words: why?.textContent };
    });
    expect(during.classes).toContain('is-stale');
    expect(during.words).toContain('…');
    await untilAssessed(page);
    expect(await textOf(app.page, '.answer-meaning')).not.toContain('…');
    await tapButton(page, /Undo/);
    await tapButton(page, 'Close');
  });

  it('waits for a held button to be let go', async () => {
    const { page } = app;
    await openTile(page, 'distance');
    const box = await page.getByRole('button', { name: 'Farther' }).boundingBox();
    if (!box) throw new Error('there is no button');
    const cdp = await app.context.newCDPSession(page);
    const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    const why = page.locator('.answer-meaning');
    // What was changed before has been asked for by then, and is not counted.
    await untilAssessed(page);
    const clock = await holdClock(page);
    const take = await countWork(page, app.server.origin);
    await cdp.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [at] });
    await clock.frames(60);
    expect(await why.getAttribute('class')).toContain('is-stale');
    expect((await take()).jobs).toBe(0);
    await cdp.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    await clock.letGo();
    await untilAssessed(page);
    expect((await take()).jobs).toBe(1);
    await tapButton(page, /Undo/);
    await tapButton(page, 'Close');
  });

  it('says that a ball played too softly does not get there, and what would help', async () => {
    const { page } = app;
    await openTile(page, 'speed');
    const field = page.getByRole('textbox', { name: 'Speed off the tip' });
    await field.fill('0.7');
    await field.blur();
    await untilAssessed(page);
    expect(engineRoom({ ...LONG_SHOT, speedMps: 0.7 }, FAR_POCKET).windows).toBeNull();
    expect(await textOf(app.page, '.why-chance')).toBe('does not get to the pocket');
    expect(await textOf(app.page, '.why-certainty')).toContain('firmer');
    expect(await page.locator('.aim-band, .bar-room').count()).toBe(0);
    await tapButton(page, 'Why');
    expect(await textOf(app.page, '.why-room')).toContain('Play firmer, cut it fuller');
    await tapButton(page, 'Done');
    await tapButton(page, /Undo/);
  });
});
