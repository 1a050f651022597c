import { launchBrowser, PHONE } from './launch-browser';
import { untilRendered } from './open-app';
import { untilAssessed } from './read-room';
import { settle } from './read-shot';
import { startStaticServer } from './static-server';
import { tapButton } from './thumb';
import { untilCompared } from './touch-table';

/**
 * Takes the two pictures of the app that the README and the web app manifest show: the worked example
 * on Shot, and one invented position compared on Choose, for a player who makes seven of ten.
 */
const FOLDER = 'public/pictures';

const server = await startStaticServer({ folder: 'dist' });
const browser = await launchBrowser();
const context = await browser.newContext({ ...PHONE, deviceScaleFactor: 2, colorScheme: 'dark' });
const page = await context.newPage();
await page.goto(`${server.url}#shot/question`);
await untilRendered(page);
await tapButton(page, '7');
await page.getByText(/^That makes/).waitFor();
await page.goto(`${server.url}#shot`);
await untilAssessed(page);
await page.screenshot({ path: `${FOLDER}/shot.png` });
await page.goto(`${server.url}#choose/ways`);
await untilCompared(page);
await page.locator('.way-row').first().tap();
await page.locator('.fan-path').first().waitFor();
await settle(page);
await page.screenshot({ path: `${FOLDER}/choose.png` });
await browser.close();
await server.stop();
