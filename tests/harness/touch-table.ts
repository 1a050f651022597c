import type { Page } from 'playwright-core';
import { vi } from 'vitest';
import { PATIENCE_MS } from './patience';
import { settle } from './read-shot';

/** A place on the table: how far from the break end and from the left, as shares of the bed. */
export interface BedShare {
  readonly up: number;
  readonly across: number;
}

/**
 * Where that is on an upright table, CSS pixels: the cloth's edges are those of the noses. Another mode
 * has other tools beside the table, which then is drawn anew as large as there is room.
 */
export async function pointOnTable(page: Page, { up, across }: BedShare) {
  await settle(page);
  const { left, right, near, far } = await vi.waitFor(() => bedOnScreen(page), PATIENCE_MS);
  return { x: left + across * (right - left), y: near + up * (far - near) };
}

/** Throws until the table is drawn, which after a change of place takes a frame or two. */
async function bedOnScreen(page: Page) {
  const noses = await page.locator('.board-nose').evaluateAll((paths) =>
    paths.map((path) => {
      const { left, right, top, bottom } = path.getBoundingClientRect();
      return { left, right, top, bottom };
    }),
  );
  const bed = {
    left: Math.max(...noses.map(({ right }) => right).filter((x) => x < middleOf(noses))),
    right: Math.min(...noses.map((nose) => nose.left).filter((x) => x > middleOf(noses))),
    near: Math.max(...noses.map(({ top }) => top)),
    far: Math.min(...noses.map(({ bottom }) => bottom)),
  };
  if (!Object.values(bed).every(Number.isFinite)) throw new Error('no table is drawn yet');
  return bed;
}

function middleOf(noses: readonly { left: number; right: number }[]): number {
  const most = Math.max(...noses.map(({ right }) => right));
  const least = Math.min(...noses.map(({ left }) => left));
  return (most + least) / 2;
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
