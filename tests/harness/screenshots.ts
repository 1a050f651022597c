import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { launchBrowser } from './launch-browser';
import { untilRendered } from './open-app';
import { untilAssessed } from './read-room';
import { SCREENS, SIZES, THEMES } from './screens';
import { startStaticServer } from './static-server';

/** Writes a picture of every screen at every size and in both themes to a folder. */
const { values } = parseArgs({
  options: {
    from: { type: 'string', default: 'dist' },
    to: { type: 'string', default: 'shots' },
    only: { type: 'string', default: '' },
  },
});

const server = await startStaticServer({ folder: values.from });
const browser = await launchBrowser();
await mkdir(values.to, { recursive: true });
let written = 0;
for (const size of SIZES) {
  const context = await browser.newContext({
    viewport: size,
    deviceScaleFactor: 2,
    isMobile: true,
    hasTouch: true,
  });
  const page = await context.newPage();
  for (const screen of SCREENS.filter((name) => name.includes(values.only))) {
    await page.goto(`${server.url}#${screen}`);
    await page.reload();
    await untilRendered(page);
    if (screen.startsWith('shot')) await untilAssessed(page);
    for (const theme of THEMES) {
      await page.evaluate((name) => {
        document.documentElement.dataset.theme = name;
      }, theme);
      const file = `${screen.replaceAll('/', '-')}-${size.width}x${size.height}-${theme}.png`;
      await page.screenshot({ path: join(values.to, file), fullPage: true });
      written++;
    }
  }
  await context.close();
}
await browser.close();
await server.stop();
console.log(`${written} pictures are in ${values.to}/`);
