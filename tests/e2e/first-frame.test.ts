import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { type OpenApp, openApp } from '../harness/open-app';

let app: OpenApp;
beforeEach(async () => {
  app = await openApp({ context: { serviceWorkers: 'block', colorScheme: 'light' } });
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
