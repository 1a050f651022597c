import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { type OpenApp, openApp } from '../harness/open-app';

let app: OpenApp;
beforeEach(async () => {
  app = await openApp({ hasWorkers: false, context: { colorScheme: 'light' } });
});
afterEach(() => app.close());

it('is dark before any stylesheet or script has come, even on a light system', async () => {
  await app.page.route(/\.(css|js)$/, (route) => route.abort());
  await app.page.reload();
  const slate = /"background_color":"#(\w\w)(\w\w)(\w\w)"/.exec(
    readFileSync('dist/manifest.webmanifest', 'utf8'),
  );
  const channels = (slate ?? []).slice(1).map((hex) => Number.parseInt(hex, 16));
  const root = await app.page.evaluate(() => {
    const style = getComputedStyle(document.documentElement);
    return { background: style.backgroundColor, fromStylesheet: style.getPropertyValue('--slate') };
  });
  expect(root).toEqual({ background: `rgb(${channels.join(', ')})`, fromStylesheet: '' });
});

it('has its drawings at their own size in the first frame that shows them', async () => {
  const { page } = app;
  await page.addInitScript(() => {
    const look = () => {
      const drawings = [...document.querySelectorAll('.overhead-drawing, .shooter-diagram')];
      if (drawings.length === 0) {
        requestAnimationFrame(look);
        return;
      }
      const sizes = drawings.map((drawing) => {
        const svg = drawing.querySelector('svg');
        return `${svg?.getAttribute('width')} of ${svg?.parentElement?.clientWidth}`;
      });
      document.documentElement.dataset.firstSizes = sizes.join(', ');
    };
    requestAnimationFrame(look);
  });
  await page.reload();
  const sizes = () => page.evaluate(() => document.documentElement.dataset.firstSizes ?? '');
  await expect.poll(sizes).toMatch(/^(\d+) of \1, (\d+) of \2$/);
});

it('draws in the system’s own ink where colours are forced', async () => {
  const { page } = app;
  await page.emulateMedia({ forcedColors: 'active' });
  const inks = await page.evaluate(() =>
    ['.ball-path', '.object-ball', 'body'].map((selector) => {
      const style = getComputedStyle(document.querySelector(selector) ?? document.body);
      return selector === 'body' ? style.color : style.stroke;
    }),
  );
  expect(new Set(inks).size).toBe(1);
});
