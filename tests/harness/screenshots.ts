import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import type { Page } from 'playwright-core';
import { pictureAllWays } from './all-ways-at-hand';
import { bringIn, inventedBackup, pickBackup, saveBackup } from './backup-at-hand';
import { launchBrowser } from './launch-browser';
import { playEveryTrial } from './measure-at-table';
import { untilRendered } from './open-app';
import { untilTold } from './read-room';
import { SCREENS, SIZES, THEMES } from './screens';
import { startStaticServer } from './static-server';
import { untilCompared } from './touch-table';

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
/** As it stands, in both themes; what scrolls within is drawn out. */
async function picture(
  page: Page,
  name: string,
  { width, height }: { width: number; height: number },
) {
  for (const theme of THEMES) {
    await page.evaluate((chosen) => {
      document.documentElement.dataset.theme = chosen;
    }, theme);
    const file = `${name}-${width}x${height}-${theme}.png`;
    await page.screenshot({ path: join(values.to, file), fullPage: true });
    written++;
  }
}

/** Gives a list that scrolls by itself all the height it wants. */
async function unfold(page: Page) {
  await page.locator('.app').evaluate((app) => {
    app.style.height = 'auto';
  });
}

for (const size of SIZES) {
  const context = await browser.newContext({
    viewport: size,
    deviceScaleFactor: 2,
    isMobile: true,
    hasTouch: true,
  });
  const page = await context.newPage();
  for (const screen of SCREENS.filter((name) => name.includes(values.only))) {
    // Loaded anew, a page that was opened by a link is not so any more.
    await page.goto('about:blank');
    await page.goto(`${server.url}#${screen}`);
    await untilRendered(page);
    await untilTold(page, screen);
    await picture(page, screen.replaceAll('/', '-').slice(0, 40), size);
  }
  if ('choose-compared'.includes(values.only)) {
    await page.goto(`${server.url}#choose/ways`);
    await untilRendered(page);
    await untilCompared(page);
    await picture(page, 'choose-compared', size);
    await page.locator('.chance-map').scrollIntoViewIfNeeded();
    await picture(page, 'choose-compared-map', size);
    await page.locator('.way-row').first().tap();
    await page.locator('.fan-path').first().waitFor();
    await picture(page, 'choose-way', size);
  }
  if ('choose-all'.includes(values.only)) {
    await pictureAllWays(page, server.url, (name) => picture(page, name, size));
  }
  if ('measure'.includes(values.only)) {
    await page.goto(`${server.url}#kit/measure`);
    await playEveryTrial(page, (trial, step) => picture(page, `measure-${trial}-${step}`, size));
    await page.locator('.sureness-now').first().waitFor();
    await page.evaluate(() => {
      document.querySelector<HTMLElement>('.app')?.style.setProperty('height', 'auto');
    });
    await picture(page, 'measure-taught', size);
  }
  if ('backup'.includes(values.only)) {
    await page.goto(`${server.url}#kit/backup`);
    await unfold(page);
    await saveBackup(page);
    await pickBackup(page, await inventedBackup());
    await page.locator('.backup-changes summary').first().click();
    await picture(page, 'backup-planned', size);
    await bringIn(page);
    await unfold(page);
    await pickBackup(page, { name: 'notes.txt', text: 'Invented notes.' });
    await picture(page, 'backup-brought-in', size);
  }
  await context.close();
}
await browser.close();
await server.stop();
console.log(`${written} pictures are in ${values.to}/`);
