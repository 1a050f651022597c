import { spawn } from 'node:child_process';
import { startWebKit } from './webkit-process';

/** What the page below writes: it shows that the console is heard. */
const HEARD = 'heard from the console';
const SPEAKER = `data:text/html,<script>console.error('${HEARD}')</script>`;

/** What a page says on its way is said by then, ms. */
const LISTEN_MS = 1500;

/** Built without web app manifests, as this WebKit is, it takes what is said of them for a slip. */
const NO_MANIFESTS = "Unrecognized Content-Security-Policy directive 'manifest-src'";

/**
 * Opens pages in WebKit without a driver, which cannot hear the console while a page loads.
 *
 * @param isLoaded whether the pages have come to what they do last
 * @returns the console's lines
 */
export async function loadInWebKit(
  urls: readonly string[],
  isLoaded: () => boolean,
): Promise<string[]> {
  const { browser, env, stop } = await startWebKit();
  const args = ['--enable-write-console-messages-to-stdout=true', SPEAKER, ...urls];
  // It writes them to the other stream all the same.
  const child = spawn(browser, args, { env, stdio: ['ignore', 'ignore', 'pipe'] });
  let heard = '';
  child.stderr.on('data', (text) => {
    heard += text;
  });
  try {
    for (let wait = 0; wait < 200 && !(heard.includes(HEARD) && isLoaded()); wait++) await ms(100);
    await ms(LISTEN_MS);
    if (!heard.includes(HEARD)) throw new Error('The console of WebKit cannot be heard.');
  } finally {
    child.kill();
    await stop();
  }
  return heard
    .split('\n')
    .filter((line) => line.includes('CONSOLE'))
    .filter((line) => !line.includes(HEARD) && !line.includes(NO_MANIFESTS));
}

const ms = (time: number) => new Promise((resolve) => setTimeout(resolve, time));
