import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

/** What it takes to drive WebKit. */
export interface WebKitPrograms {
  readonly driver: string;
  readonly browser: string;
  /** A screen that nobody sees. */
  readonly screen: string;
}

const DRIVER = '/usr/bin/WebKitWebDriver';
const SCREEN = '/usr/bin/Xvfb';

/** Newer distributions' driver belongs to the last one. */
const VERSIONS = ['webkit2gtk-4.1', 'webkit2gtk-4.0', 'webkitgtk-6.0'];

/**
 * WebKitGTK's small browser, its driver, and a screen: the browser is the one named by
 * LEEWAY_WEBKIT, else the one that came with the library.
 *
 * @throws Error saying what to do, if one of them is missing.
 */
export async function findWebKit(): Promise<WebKitPrograms> {
  const named = process.env.LEEWAY_WEBKIT;
  if (named && !existsSync(named)) {
    throw new Error(`LEEWAY_WEBKIT names ${named}, which is not there: please correct it.`);
  }
  const browser = named ?? besideLibrary();
  if (browser && existsSync(DRIVER) && existsSync(SCREEN)) {
    return { driver: DRIVER, browser, screen: SCREEN };
  }
  throw new Error(
    'There is no WebKit to drive here: it takes Linux, WebKitGTK with its MiniBrowser, its ' +
      'WebKitWebDriver and Xvfb (on Debian, webkit2gtk-driver and xvfb); a MiniBrowser elsewhere ' +
      'is named by LEEWAY_WEBKIT. Please install them and run this again.',
  );
}

/** The MiniBrowser of the newest WebKitGTK here. */
function besideLibrary(): string | undefined {
  const folders = ['/usr/lib', '/usr/libexec'].filter((folder) => existsSync(folder));
  const [lib = ''] = folders;
  const within = folders.flatMap((folder) => [folder, ...triplets(folder, lib)]);
  return within
    .flatMap((folder) => VERSIONS.map((name) => join(folder, name, 'MiniBrowser')))
    .find((path) => existsSync(path));
}

/** Where a distribution keeps what is built for one kind of machine, such as x86_64-linux-gnu. */
function triplets(folder: string, lib: string): string[] {
  if (folder !== lib) return [];
  return readdirSync(folder)
    .filter((name) => name.includes('-linux-'))
    .map((name) => join(folder, name));
}
