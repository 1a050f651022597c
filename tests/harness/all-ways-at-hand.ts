import type { Page } from 'playwright-core';
import { untilRendered } from './open-app';
import { PATIENCE_MS } from './patience';
import { tap, tapButton } from './thumb';
import { tapTable } from './touch-table';

/**
 * Lays an invented position on a new table, by the diamonds: there are ways of every kind, but
 * none of them cuts the 3 back into the near left corner.
 */
export async function layHidden(page: Page): Promise<void> {
  await tapButton(page, /^Positions/);
  await tapButton(page, 'New position');
  for (const [name, up, across] of [
    ['cue ball', 0.25, 0.5],
    ['12 ball', 0.625, 0.625],
    ['3 ball', 0.75, 0.75],
  ] as const) {
    await tapButton(page, name);
    await tapTable(page, { up, across });
  }
}

/** Looks for ways of every kind to pot any ball anywhere. */
export async function lookAtAll(page: Page): Promise<void> {
  await tapButton(page, 'Ways');
  await page.locator('.all-way-row').first().waitFor({ timeout: PATIENCE_MS });
}

/** Waits until the first three ways are on screen, and more are looked for. */
export async function untilFirstWays(page: Page): Promise<void> {
  const note = page.locator('.compare-note', { hasText: /looked at, ([3-9]|\d\d) ways so far/ });
  await note.waitFor({ timeout: PATIENCE_MS });
}

/** Waits until all is looked at. */
export async function untilAllLooked(page: Page): Promise<void> {
  const note = page.locator('.compare-note', {
    hasText: /(wis|likeli)est first|Nothing goes|in order/,
  });
  await note.waitFor({ timeout: PATIENCE_MS });
}

/** Opens every row that stands for several, or folds them again. */
export async function unfold(page: Page, isOpen = true): Promise<void> {
  const others = page.locator(`.way-fold[aria-expanded="${!isOpen}"]`);
  while ((await others.count()) > 0) await tap(page, others.first());
}

/** A row of the kind that is called so. */
export const rowOf = (page: Page, kind: string | RegExp) =>
  page.locator('.all-way-row', { hasText: kind }).first();

/** Lays the same position, looks at all its ways, and opens one of a kind. */
export async function openOneOf(page: Page, kind: string): Promise<void> {
  await layHidden(page);
  await tapButton(page, 'Play');
  await lookAtAll(page);
  await untilAllLooked(page);
  await openWay(page, kind);
}

/** Opens the first row of a kind, as far as its paths. */
async function openWay(page: Page, kind: string): Promise<void> {
  await tap(page, rowOf(page, kind));
  await page.locator('.fan-path').first().waitFor();
}

/** Takes pictures of all that there is of ways of every kind. */
export async function pictureAllWays(
  page: Page,
  url: string,
  take: (name: string) => Promise<void>,
): Promise<void> {
  await page.goto(`${url}#choose/positions`);
  await page.reload();
  await untilRendered(page);
  await page.locator('.record-choose', { hasText: 'A ball beside the way' }).first().tap();
  await tapButton(page, 'Play');
  await tapButton(page, 'Any ball');
  await tapButton(page, 'Any pocket');
  await take('choose-all-play');
  await tapButton(page, 'pick…');
  await take('choose-all-picked');
  await tapButton(page, 'any');
  await lookAtAll(page);
  await take('choose-all-running');
  await untilAllLooked(page);
  await take('choose-all-done');
  await tapButton(page, 'Likeliest first');
  await take('choose-all-goes');
  await tapButton(page, 'Wisest first');
  await tap(page, rowOf(page, 'Safety'));
  await page.locator('.struck-spread').waitFor();
  await take('choose-all-safety');
  await tapButton(page, /All ways/);
  await openWay(page, 'bank');
  await take('choose-all-way');
  await tapButton(page, 'Aim it');
  await page.locator('.board-aim').waitFor();
  await take('choose-all-laid');
  await tapButton(page, /How it plays/);
  const link = await linkOfWay(page);
  await page.goto(`${url}#kit/link/${link.split('/').at(-1)}`);
  await page.locator('.link-part').first().waitFor();
  await take('choose-all-brought');
  await tapButton(page, 'Keep it');
  await take('choose-all-kept');
  await tapButton(page, 'Go to Choose');
  await page.locator('.board-aim').waitFor();
  await take('choose-all-handed');
}

/** The link of the way that is looked at, as it is shared. */
export async function linkOfWay(page: Page): Promise<string> {
  await tapButton(page, 'Share');
  await page.getByRole('img', { name: /QR code/ }).waitFor();
  return page.getByRole('textbox', { name: 'As a link' }).inputValue();
}
