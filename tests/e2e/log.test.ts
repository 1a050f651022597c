import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { bringIn, pickBackup, saveBackup } from '../harness/backup-at-hand';
import { keptPhone } from '../harness/kept-phone';
import { openApp } from '../harness/open-app';
import { settle } from '../harness/read-shot';
import { tap, tapButton } from '../harness/thumb';
import { untilKept } from '../harness/until-kept';
import { resealed } from '../store/backup/resealed';

const phone = keptPhone();
const { goTo } = phone;

/** Logs the shot on Shot: two taps, and the way back. */
async function logShot(page: Page, result: string): Promise<void> {
  await tapButton(page, 'Log how it went');
  await tapButton(page, result);
  await page.locator('.undo-delete', { hasText: 'Logged' }).waitFor();
  await tapButton(page, /Back/);
}

/** Answers the level test’s shot once it is laid. */
async function answerTest(page: Page, shot: number, result: RegExp): Promise<void> {
  await untilLaid(page, shot);
  await tapButton(page, result);
}

async function untilLaid(page: Page, shot: number): Promise<string> {
  await page.getByRole('heading', { name: `Shot ${shot} of 15` }).waitFor();
  await page.locator('.test-shot:not(.is-stale)').waitFor();
  return (await page.locator('.test-words').textContent()) ?? '';
}

/** What the log tells: what is known, once it is of all there is, and every row. */
async function readLog(page: Page) {
  await goTo(page, 'log');
  await page.locator('.player-known:not(.is-stale)').waitFor();
  return {
    known: await page.locator('.player-known').textContent(),
    rows: await page.locator('.log-row').allTextContents(),
  };
}

it.each([
  { width: 360, height: 640 },
  { width: 844, height: 390 },
])('moves nothing that is pressed as a shot is logged, $width by $height', async (viewport) => {
  const { page, ...app } = await openApp({ hash: '#shot/after', context: { viewport } });
  const places = (selector: string) =>
    page
      .locator(selector)
      .evaluateAll((all) => all.map((one) => JSON.stringify(one.getBoundingClientRect())));
  await page.locator('.result-buttons').waitFor();
  await settle(page);
  const before = await places('.outcome .button');
  await tapButton(page, 'Too thin');
  await page.locator('.entry-more .button').first().waitFor();
  expect(await places('.outcome .button')).toEqual(before);
  const more = await places('.entry-more .button, .undo-delete .button');
  const again = await page.getByRole('button', { name: 'Same again' }).boundingBox();
  expect((again?.y ?? 0) + 28).toBeGreaterThan(viewport.height / 2);
  await tapButton(page, 'Not as meant');
  await page.getByText('not learnt from').waitFor();
  expect(await places('.entry-more .button, .undo-delete .button')).toEqual(more);
  expect(await places('.outcome .button')).toEqual(before);
  await app.close();
});

it('asks, logs, goes on after the browser was killed, learns, and comes back from a file the same', async () => {
  const before = await phone.launch();
  const page = await before.newPage();
  await goTo(page, 'log');
  await tapButton(page, /one question/);
  await tapButton(page, '6');
  await tapButton(page, 'Done');
  await goTo(page, 'shot');
  await logShot(page, 'Went');
  await logShot(page, 'Too thin');
  await tapButton(page, 'Log how it went');
  await tap(page, page.getByRole('switch', { name: /Scratched/ }));
  await tapButton(page, 'Too full');
  await goTo(page, 'log/test');
  await tapButton(page, 'Begin');
  await answerTest(page, 1, /^Went/);
  await answerTest(page, 2, /^(Too thin|Passed left)/);
  const third = await untilLaid(page, 3);
  await untilKept(page, 'played', { scratched: true, result: 'full' });
  await untilKept(page, 'played', {
    testId: expect.any(String),
    result: expect.not.stringMatching('went'),
  });
  const address = page.url();
  await phone.kill(before);

  const after = await phone.launch();
  try {
    const again = await after.newPage();
    await again.goto(address);
    expect(await untilLaid(again, 3)).toBe(third);
    const log = await readLog(again);
    expect(log.known).toMatch(
      /^From 6 made of 10 and 5 shots: a table length on, .* less than \d+\u00a0mm \(as far as is known /,
    );
    expect(log.rows).toHaveLength(5);
    expect(log.rows.filter((row) => /^Went/.test(row))).toHaveLength(2);

    await goTo(again, 'kit/backup');
    const file = await saveBackup(again);
    await phone.clearSite(again);
    await goTo(again, 'log');
    expect(await again.locator('.log-row').count()).toBe(0);
    await goTo(again, 'kit/backup');
    await pickBackup(again, file);
    await bringIn(again);
    expect(await readLog(again)).toEqual(log);

    await goTo(again, 'kit/backup');
    for (const forged of FORGERIES) {
      const text = await resealed(file.text, (lines) =>
        lines.map((line) =>
          line.store === 'played' ? { ...line, row: { ...(line.row as object), ...forged } } : line,
        ),
      );
      await pickBackup(again, { name: 'forged.json', text });
      await again.getByText(/forged\.json is not brought in.*Nothing was changed/).waitFor();
    }
    expect(await readLog(again)).toEqual(log);
  } finally {
    await after.close();
  }
});

/** Rows that no app of ours writes: each would be learnt from. */
const FORGERIES = [{ result: 'always' }, { shot: { distanceM: -1 } }];
