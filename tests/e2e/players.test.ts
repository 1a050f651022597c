import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runAxe } from '../harness/axe';
import { bringIn, type FileAtHand, pickBackup } from '../harness/backup-at-hand';
import { faultsAtAllSizes, outOfSight } from '../harness/layout-faults';
import { type OpenApp, openApp, untilRendered } from '../harness/open-app';
import { textOf, untilAssessed } from '../harness/read-room';
import { THEMES } from '../harness/screens';
import { tap, tapAction, tapButton } from '../harness/thumb';
import { untilKept } from '../harness/until-kept';

let app: OpenApp;
let file: FileAtHand;
beforeAll(async () => {
  app = await openApp({ hash: '#shot/why' });
});
afterAll(async () => {
  expect(app.guard.problems).toEqual([]);
  await app.close();
});

/** What Shot and Kit tell of whoever plays. */
async function figuresOf(page: Page) {
  await page.goto(`${app.server.url}#shot`);
  await untilAssessed(page);
  const chance = await textOf(page, '.why-chance');
  await page.goto(`${app.server.url}#kit`);
  const row = page.locator('[data-opens="players"] .shelf-effect');
  return { chance, known: await row.textContent() };
}

let told: Awaited<ReturnType<typeof figuresOf>>;

describe('the question', () => {
  it('is asked beside a chance that is nobody’s, and answered by two taps', async () => {
    const { page } = app;
    await untilAssessed(page);
    expect(await textOf(page, '.why-chance')).toMatch(/^(easy|fair|hard) for most$/);
    await tapButton(page, /one question/);
    await tapButton(page, '7');
    await page
      .getByText(
        /^For you: a table length on, .* less than \d+\u00a0mm \(as far as is known .*°\)\.$/,
      )
      .waitFor();
    await tapButton(page, 'Done');
    // How far it may be off is told once the answer has been learnt from.
    const chance = () => textOf(page, '.why-chance');
    await expect.poll(chance).toMatch(/^\d+ in 10 for you, \d+ to \d+$/);
    await untilAssessed(page);
    told = await figuresOf(page);
    expect(told.known).toMatch(/^From 7 made of 10: a table length on, .*; 0\.\d\d°\)\.$/);
  });

  it('is not asked again, and the same figures are there at once after a reload', async () => {
    const { page } = app;
    await page.reload();
    await untilRendered(page);
    expect(await page.locator('[data-opens="players"] .shelf-effect').textContent()).toBe(
      told.known,
    );
    await page.goto(`${app.server.url}#shot/why`);
    await untilAssessed(page);
    expect(await page.locator('.ask-once').count()).toBe(0);
    expect(await figuresOf(page)).toEqual(told);
  });

  it('fits every screen in both themes, large enough for a thumb, and axe finds nothing', async () => {
    const { page } = app;
    await tapButton(page, /^Player/);
    await tapAction(page, 'Look at', 'You');
    await page.getByText(/^For you: a table length on/).waitFor();
    const faults = await faultsAtAllSizes(page);
    for (const theme of THEMES) {
      await page.evaluate((name) => {
        document.documentElement.dataset.theme = name;
      }, theme);
      faults.push(...(await runAxe(page)).found);
    }
    expect(faults).toEqual([]);
  });
});

describe('from the first start, 360 by 640', () => {
  it('the question is a tap away on Shot, answered by a second, and then costs no line', async () => {
    const first = await openApp({ context: { viewport: { width: 360, height: 640 } } });
    const { page } = first;
    await untilAssessed(page);
    const wanted = ['.shooter-diagram', '.answer', '.ask-line', '.input-tiles', '.nav-bar'];
    // The tip is dragged on the picture from the first.
    expect(await outOfSight(page, [...wanted, '.near-ball'])).toEqual([]);
    await tapButton(page, /Answer one question/);
    await page.locator('.made-of-ten').waitFor();
    expect(await outOfSight(page, ['.question-drawing', '.made-of-ten'])).toEqual([]);
    await tapButton(page, '7');
    await page.getByText(/^For you: a table length on/).waitFor();
    await tapButton(page, 'Done');
    await page.locator('.why-button').waitFor();
    await expect.poll(() => textOf(page, '.why-chance')).toMatch(/ in 10 for you/);
    expect(await page.locator('.ask-line').count()).toBe(0);
    await untilKept(page, 'players', { madeOf10: 7 });
    await page.reload();
    await untilAssessed(page);
    expect(await page.locator('.ask-line').count()).toBe(0);
    expect(first.guard.problems).toEqual([]);
    await first.close();
  });
});

describe('one player alone', () => {
  it('goes out as a file', async () => {
    const { page } = app;
    const coming = page.waitForEvent('download');
    await tapButton(page, 'Save this player');
    const download = await coming;
    const text = await readFile(await download.path(), 'utf8');
    file = { name: download.suggestedFilename(), text };
    expect(file.name).toMatch(/^leeway-player-you-\d{4}-\d\d-\d\d\.json$/);
  });

  it('is added on another phone, where it tells the same', async () => {
    const other = await openApp({ hash: '#kit/backup' });
    const { page } = other;
    await pickBackup(page, file);
    expect(await page.locator('.backup-plan').textContent()).toContain('of one player alone');
    expect(await page.getByRole('button', { name: 'Replace it' }).count()).toBe(0);
    await bringIn(page);
    await page.goto(`${other.server.url}#kit/players`);
    const rows = page.locator('.record-choose');
    expect(await rows.count()).toBe(2);
    await tap(page, rows.filter({ hasText: '7 of 10' }));
    await page.goto(`${other.server.url}#kit`);
    const row = page.locator('[data-opens="players"] .shelf-effect');
    await expect.poll(() => row.textContent()).toBe(told.known);
    await page.goto(`${other.server.url}#shot`);
    await expect.poll(() => textOf(page, '.why-chance')).toBe(told.chance);
    expect(other.guard.problems).toEqual([]);
    await other.close();
  });
});
