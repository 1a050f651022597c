import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { openOneOf, rowOf, untilAllLooked } from '../harness/all-ways-at-hand';
import { bringIn, pickBackup, saveBackup } from '../harness/backup-at-hand';
import { keptPhone } from '../harness/kept-phone';
import { untilRendered } from '../harness/open-app';
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

const KEPT = '✓ Kept: practise';

/** The ball that falls is drawn from where it lies, over a rail, into the pocket that is ringed. */
async function expectDrawnIntoPocket(page: Page): Promise<void> {
  const path = page.locator('.test-table .ball-path.is-falling');
  await path.waitFor({ state: 'attached' });
  const points = ((await path.getAttribute('d')) ?? '')
    .slice(1)
    .split('L')
    .map((point) => point.split(' ').map(Number));
  const ring = page.locator('.test-ring');
  const [cx, cy, r] = await Promise.all(['cx', 'cy', 'r'].map((name) => ring.getAttribute(name)));
  const [x = 0, y = 0] = points.at(-1) ?? [];
  expect(Math.hypot(x - Number(cx), y - Number(cy))).toBeLessThan(2 * Number(r));
  expect(points.length).toBeGreaterThan(2);
}

/** What opens under the last kept way lies above the way between the places. */
async function expectMenuInSight(page: Page): Promise<void> {
  const size = page.viewportSize() ?? { width: 390, height: 844 };
  await page.setViewportSize({ width: 360, height: 640 });
  const more = page.getByRole('button', { name: /^More: \d+ / });
  await tap(page, more);
  const menu = page.locator('.record-actions');
  await menu.waitFor();
  const [box, nav] = [await menu.boundingBox(), await page.locator('.nav-bar').boundingBox()];
  if (!box || !nav) throw new Error('both are there');
  expect(box.y + box.height).toBeLessThanOrEqual(nav.y + 1);
  await page.setViewportSize(size);
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
  expect(await page.locator('h1').textContent()).toBe('Line: try 4 of 5, 2 made');
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
    await openOneOf(again, 'bank');
    await tapButton(again, 'Keep');
    await again.getByRole('button', { name: KEPT }).waitFor();
    // It knows it when it is come back to, and after all was looked for anew.
    await tapButton(again, /All ways/);
    await tap(again, rowOf(again, 'bank'));
    await again.getByRole('button', { name: KEPT }).waitFor();
    await untilKept(again, 'positions', { drill: expect.objectContaining({ kind: 'bank' }) });
    await again.reload();
    await untilRendered(again);
    await untilAllLooked(again);
    await tap(again, rowOf(again, 'bank'));
    await tapButton(again, KEPT);
    await again.locator('.test-words', { hasText: 'Point the cue at' }).waitFor();
    expect(await again.locator('.test-words').textContent()).toMatch(
      /Cue ball: 2\.0 diamonds along, 2\.0 from the left\.12 ball: 5\.0 .*3 ball: 6\.0 /,
    );
    await expectDrawnIntoPocket(again);
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
    await expectMenuInSight(again);
    await tap(again, again.getByRole('button', { name: /^Card \d+ / }));
    const card = again.getByRole('img', { name: /^Drill card\. / });
    expect(await card.getAttribute('aria-label')).toMatch(
      /The \d+ into the .*, bank off .* Point the cue at .* Tick a box/,
    );
    // A way of its own for each ball that moves.
    const ways = again.locator('.card-side .is-way');
    await expect.poll(() => ways.count(), PATIENT).toBeGreaterThan(1);

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
