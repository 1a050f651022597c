import type { Page } from 'playwright-core';

/** A place on the table: how far from the break end and from the left, as shares of the bed. */
export interface BedShare {
  readonly up: number;
  readonly across: number;
}

/** Where that is on an upright table, CSS pixels: the cloth's edges are those of the noses. */
export async function pointOnTable(page: Page, { up, across }: BedShare) {
  await page.locator('.board-nose').first().waitFor({ state: 'attached' });
  const noses = await page.locator('.board-nose').evaluateAll((paths) =>
    paths.map((path) => {
      const { left, right, top, bottom } = path.getBoundingClientRect();
      return { left, right, top, bottom };
    }),
  );
  const left = Math.max(...noses.map(({ right }) => right).filter((x) => x < middleOf(noses)));
  const right = Math.min(...noses.map((nose) => nose.left).filter((x) => x > middleOf(noses)));
  const near = Math.max(...noses.map(({ top }) => top));
  const far = Math.min(...noses.map(({ bottom }) => bottom));
  return { x: left + across * (right - left), y: near + up * (far - near) };
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

/** Compares all ways, and waits until they are. */
export async function untilCompared(page: Page): Promise<void> {
  await page.getByRole('button', { name: /^Compare/ }).tap();
  await page.locator('.way-row').first().waitFor({ timeout: 100_000 });
  await page.locator('.compare progress').waitFor({ state: 'detached', timeout: 100_000 });
}
