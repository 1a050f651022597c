import type { EnginePage } from './engine-page';
import { seen, settle, tap, waitFor } from './engine-thumb';

/** Opens the control of one input of a shot by its tile, unless it is open. */
export async function openTile(page: EnginePage, input: string): Promise<void> {
  const tile = `[data-opens="${input}"]`;
  const opened = { css: `${tile}[aria-expanded="true"]` };
  if (await seen(page, opened)) return;
  await tap(page, { css: tile });
  await waitFor(page, opened);
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
