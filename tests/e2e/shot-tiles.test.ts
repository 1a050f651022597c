import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenApp, openApp } from '../harness/open-app';
import { settle } from '../harness/read-shot';
import { openTile, tapButton } from '../harness/thumb';

let app: OpenApp;
beforeAll(async () => {
  app = await openApp({ hasWorkers: false });
});
afterAll(async () => {
  expect(app.guard.problems).toEqual([]);
  await app.close();
});

const WIDTHS = [320, 360, 390, 430];

/** Where each tile stands at each width, whole px; and what reaches out of one. */
async function tilesAtAllWidths() {
  const found: { boxes: string[]; out: string[] }[] = [];
  for (const width of WIDTHS) {
    await app.page.setViewportSize({ width, height: 844 });
    await settle(app.page);
    found.push(
      await app.page.evaluate(() => {
        const tiles = [...document.querySelectorAll('.input-tile[data-opens]')];
        const boxOf = (element: Element) => element.getBoundingClientRect();
        const top = Math.min(...tiles.map((tile) => boxOf(tile).top));
        const parts = tiles.flatMap((tile) =>
          [...tile.querySelectorAll('b, span')].map((part) => ({ tile, part })),
        );
        return {
          boxes: tiles.map((tile) => {
            const { x, y, width: wide, height } = boxOf(tile);
            return [x, y - top, wide, height].map(Math.round).join(' ');
          }),
          out: parts.flatMap(({ tile, part }) =>
            boxOf(part).right > boxOf(tile).right + 0.5 ? [part.textContent ?? ''] : [],
          ),
        };
      }),
    );
  }
  return found;
}

async function type(tile: string, name: string, figure: string): Promise<void> {
  await openTile(app.page, tile);
  const field = app.page.getByRole('textbox', { name, exact: true });
  await field.fill(figure);
  await field.blur();
  await tapButton(app.page, 'Close');
}

it('stand as they stood and hold what they say, whatever it is', async () => {
  const before = await tilesAtAllWidths();
  await openTile(app.page, 'distance');
  await app.page.getByRole('combobox', { name: 'Unit of distance' }).selectOption('diamonds');
  await tapButton(app.page, 'Close');
  await openTile(app.page, 'speed');
  await app.page.getByRole('combobox', { name: 'Unit of speed' }).selectOption('lengths');
  await tapButton(app.page, 'Close');
  await type('distance', 'Distance', '7 5/8');
  await type('pocket', 'Distance to the pocket', '7 5/8');
  await type('cut', 'Cut', '48.6');
  await type('tip', 'Side, left or right', '1 3/8 right');
  await type('tip', 'Height, high or low', '3/8 low');
  await type('raised', 'Cue raised', '4.5');
  const after = await tilesAtAllWidths();
  expect(after.map(({ boxes }) => boxes)).toEqual(before.map(({ boxes }) => boxes));
  expect([...before, ...after].flatMap(({ out }) => out)).toEqual([]);
});
