import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { layHidden, lookAtAll, rowOf, untilAllLooked } from '../harness/all-ways-at-hand';
import { bringIn, pickBackup, saveBackup } from '../harness/backup-at-hand';
import { keptPhone } from '../harness/kept-phone';
import { PATIENCE_MS } from '../harness/patience';
import { settle } from '../harness/read-shot';
import { tap, tapButton } from '../harness/thumb';
import { untilKept } from '../harness/until-kept';

const phone = keptPhone();
const { goTo } = phone;

/** What is said of a try, once it is laid. */
async function untilTry(page: Page, theme: string, number: number): Promise<string> {
  await page.getByRole('heading', { name: `${theme}: try ${number} of 5` }).waitFor();
  await page.locator('.test-shot:not(.is-stale)').waitFor();
  return (await page.locator('.test-words').textContent()) ?? '';
}

/** What Practice tells, once what limits most is worked out. */
async function readPractice(page: Page) {
  await goTo(page, 'log/practice');
  await page.locator('.limit-bars').waitFor();
  return {
    limits: await page.locator('.practice-part').first().textContent(),
    ladders: await page.locator('[data-opens^="practice/"].shelf-row').allTextContents(),
    days: await page.locator('.practice-bars li').allTextContents(),
    kept: await page.locator('.record-choose').allTextContents(),
  };
}

const PATIENT = { timeout: PATIENCE_MS };

it('limits, ladder and kept way: tried, killed, gone on with, and back from a file the same', async () => {
  const before = await phone.launch();
  const page = await before.newPage();
  await goTo(page, 'log/practice');
  await tapButton(page, /one question/);
  await tapButton(page, '6');
  await tapButton(page, 'Done');
  await page.locator('.limit-bars').waitFor();
  expect(await page.locator('.practice-part').first().textContent()).toMatch(
    /Your (line|speed) limits you most: .* more of ten ordinary shots; /,
  );
  await tap(page, page.locator('[data-opens="practice/line"]'));
  const laid = await untilTry(page, 'Line', 1);
  expect(laid).toMatch(/About [67] in 10 for you\.$/);
  await tapButton(page, 'Went');
  await untilTry(page, 'Line', 2);
  await tapButton(page, /^(Too thin|Passed left)/);
  await untilTry(page, 'Line', 3);
  await tapButton(page, 'Went');
  expect(await untilTry(page, 'Line', 4)).toBe(laid);
  await tapButton(page, /Undo/);
  await untilTry(page, 'Line', 3);
  await tapButton(page, 'Went');
  await untilTry(page, 'Line', 4);
  await untilKept(page, 'played', { result: expect.not.stringMatching('went') });
  const address = page.url();
  await settle(page);
  await phone.kill(before);

  const after = await phone.launch();
  try {
    const again = await after.newPage();
    await again.goto(address);
    // Until the player is learnt anew, no figure is told.
    await expect.poll(() => untilTry(again, 'Line', 4), PATIENT).toBe(laid);
    await goTo(again, 'log/practice/speed');
    expect(await untilTry(again, 'Speed', 1)).toMatch(/Cue ball to stop within .* balls? of /);
    await tapButton(again, 'On the spot');
    await untilTry(again, 'Speed', 2);

    await goTo(again, 'choose');
    await layHidden(again);
    await tapButton(again, 'Play');
    await lookAtAll(again);
    await untilAllLooked(again);
    await tap(again, rowOf(again, 'bank'));
    await again.locator('.fan-path').first().waitFor();
    await tapButton(again, 'Keep');
    await tapButton(again, 'Practise');
    await again.locator('.test-words', { hasText: 'Point the cue at' }).waitFor();
    for (const said of ['Went', 'Missed', 'Went']) await tapButton(again, said);
    await again.locator('.test-words', { hasText: '2 of 3 made' }).waitFor();
    await untilKept(again, 'positions', {
      drill: expect.objectContaining({
        kind: 'bank',
        tries: expect.objectContaining({ length: 3 }),
      }),
    });

    const practice = await readPractice(again);
    expect(practice.ladders.join()).toMatch(/Line.*2 of 3 made, as hard as at first/);
    expect(practice.days).toHaveLength(2);
    expect(practice.kept).toEqual([expect.stringMatching(/bank off .*2 of 3 made/)]);

    await goTo(again, 'kit/backup');
    const file = await saveBackup(again);
    await phone.clearSite(again);
    await goTo(again, 'log/practice');
    expect(await again.locator('.record-choose').count()).toBe(0);
    await goTo(again, 'kit/backup');
    await pickBackup(again, file);
    await bringIn(again);
    expect(await readPractice(again)).toEqual(practice);
  } finally {
    await after.close();
  }
});
