import type { EnginePage } from './engine-page';
import { eventually, seen, settle, tap } from './engine-thumb';

/** Opens the control of one input of a shot by its tile. */
export async function openTile(page: EnginePage, input: string): Promise<void> {
  const tile = `[data-opens="${input}"]`;
  await tap(page, { css: tile });
  await eventually(() => seen(page, { css: `${tile}[aria-expanded="true"]` })).toBe(true);
}

/** The figures beside the answer by what they are told from: "18 mm left". */
export async function readFigures(page: EnginePage): Promise<Record<string, string>> {
  await settle(page);
  const rows = await page.evaluate(() =>
    [...document.querySelectorAll('.answer-others li')].map(({ textContent }) => textContent),
  );
  return Object.fromEntries(
    rows.map((row) => {
      const [label = '', ...rest] = row.replace(/[←→]/g, '').split(/\s+/);
      return [label, rest.join(' ').trim()];
    }),
  );
}
