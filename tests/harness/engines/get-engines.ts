import { aptInstall } from '../apt-install';
import { programStarts } from '../program-starts';
import { findWebKit, type WebKitPrograms } from './find-webkit';

const FIREFOX_PLACES = [
  '/usr/bin/firefox-esr',
  '/usr/bin/firefox',
  '/usr/local/bin/firefox',
  '/snap/bin/firefox',
  '/Applications/Firefox.app/Contents/MacOS/firefox',
  'C:\\Program Files\\Mozilla Firefox\\firefox.exe',
];

/**
 * The path of a Firefox that starts: the one named by LEEWAY_FIREFOX, else one in a usual place.
 *
 * @throws Error saying what to do, if there is none.
 */
export async function findFirefox(): Promise<string> {
  const named = process.env.LEEWAY_FIREFOX;
  for (const path of named ? [named] : FIREFOX_PLACES) if (await programStarts(path)) return path;
  throw new Error(
    named
      ? `LEEWAY_FIREFOX names ${named}, which does not start: please correct it.`
      : 'There is no Firefox here: please install it (on Debian, firefox-esr), or set ' +
          'LEEWAY_FIREFOX to the path of one, and run this again.',
  );
}

/** Sees to it that there is a Firefox, where that can be done. Throws where there is none after. */
export async function getFirefox(): Promise<string> {
  return findFirefox().catch(async () => {
    if (!process.env.LEEWAY_FIREFOX) await install('firefox-esr');
    return findFirefox();
  });
}

/** The same for WebKit, its driver and a screen for it. */
export async function getWebKit(): Promise<WebKitPrograms> {
  return findWebKit().catch(async () => {
    if (!process.env.LEEWAY_WEBKIT) await install('webkit2gtk-driver', 'xvfb', 'xauth');
    return findWebKit();
  });
}

/** Where that fails, what to do is told by whoever then looks for the browser in vain. */
async function install(...packages: string[]): Promise<void> {
  await aptInstall(...packages, 'fonts-dejavu-core').catch((error) => console.warn(String(error)));
}
