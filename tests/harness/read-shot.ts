import type { Page } from 'playwright-core';

/** The figures of the answer by what they are told from, sides as words: "18 mm left". */
export interface ReadAnswer {
  readonly lead: string;
  readonly centre: string;
  readonly ghost: string;
  readonly angle: string;
  readonly stick: string;
}

/** Reads the answer as it stands on the screen, led by the object ball. */
export async function readAnswer(page: Page): Promise<ReadAnswer> {
  await page.locator('.answer-lead').waitFor();
  await settle(page);
  const rows = await page.locator('.answer-others li').all();
  const figures = new Map(
    await Promise.all(
      rows.map(async (row) => {
        const label = (await row.locator('.answer-label').textContent()) ?? '';
        return [label, tidy(((await row.textContent()) ?? '').replace(label, ''))] as const;
      }),
    ),
  );
  const figure = (label: string) => figures.get(label) ?? `no figure for ${label}`;
  return {
    lead: tidy((await page.locator('.answer-lead').textContent()) ?? ''),
    centre: figure('centre'),
    ghost: figure('ghost'),
    angle: figure('cue turns'),
    stick: figure('stick'),
  };
}

/** What one tile says just now: no frame is waited for. */
export async function readTile(page: Page, name: string): Promise<string> {
  return tidy((await page.locator(`.input-tile[data-opens="${name}"]`).textContent()) ?? '');
}

/** What each tile says. */
export async function readTiles(page: Page): Promise<Record<string, string>> {
  await settle(page);
  const tiles = await page.locator('.input-tile[data-opens]').all();
  const read = await Promise.all(
    tiles.map(async (tile) => [
      (await tile.getAttribute('data-opens')) ?? '',
      tidy((await tile.textContent()) ?? ''),
    ]),
  );
  return Object.fromEntries(read) as Record<string, string>;
}

/** Changes reach the screen within two frames; what comes late, with the frame after it came. */
export async function settle(page: Pick<Page, 'evaluate'>): Promise<void> {
  await page.evaluate(async () => {
    do {
      await new Promise((resolve) => {
        requestAnimationFrame(() => requestAnimationFrame(resolve));
      });
    } while (document.querySelector('.late-part') !== null);
  });
}

function tidy(text: string): string {
  return text.replace(/[←→]/g, '').replace(/\s+/g, ' ').trim();
}
