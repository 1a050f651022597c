import type { Page } from 'playwright-core';
import { PATIENCE_MS } from './patience';
import { settle } from './read-shot';

/** A place on the table: how far from the break end and from the left, as shares of the bed. */
export interface BedShare {
  readonly up: number;
  readonly across: number;
}

/**
 * Where that is, CSS pixels: the cloth's edges are those of the noses. A table that is broader than it is
 * high lies with its break end on the left.
 */
export async function pointOnTable(page: Page, { up, across }: BedShare) {
  await settle(page);
  // Drawn together, which after a change of place takes a frame or two.
  await page.locator('.board-nose').first().waitFor({ state: 'attached', timeout: PATIENCE_MS });
  const { left, right, near, far } = await bedOnScreen(page);
  const [wide, high] = [right - left, near - far];
  return wide > high
    ? { x: left + up * wide, y: far + across * high }
    : { x: left + across * wide, y: near - up * high };
}

async function bedOnScreen(page: Page) {
  const noses = await page.locator('.board-nose').evaluateAll((paths) =>
    paths.map((path) => {
      const { left, right, top, bottom } = path.getBoundingClientRect();
      return { left, right, top, bottom, x: (left + right) / 2, y: (top + bottom) / 2 };
    }),
  );
  const ends = (at: readonly number[]) => ({ least: Math.min(...at), most: Math.max(...at) });
  const [across, down] = [ends(noses.map(({ x }) => x)), ends(noses.map(({ y }) => y))];
  const at = (is: (nose: (typeof noses)[number]) => boolean) => noses.find(is);
  const bed = {
    left: at(({ x }) => x === across.least)?.right,
    right: at(({ x }) => x === across.most)?.left,
    far: at(({ y }) => y === down.least)?.bottom,
    near: at(({ y }) => y === down.most)?.top,
  };
  const { left, right, far, near } = bed;
  if (left === undefined || right === undefined || far === undefined || near === undefined) {
    throw new Error('no table is drawn yet');
  }
  return { left, right, far, near };
}

export async function tapTable(page: Page, place: BedShare): Promise<void> {
  const { x, y } = await pointOnTable(page, place);
  await page.touchscreen.tap(x, y);
}

/** Waits until all ways are compared, which begins by itself. */
export async function untilCompared(page: Page): Promise<void> {
  await page.locator('.way-row').first().waitFor({ timeout: PATIENCE_MS });
  await page.locator('.compare progress').waitFor({ state: 'detached', timeout: PATIENCE_MS });
}
