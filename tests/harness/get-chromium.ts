import { execFile } from 'node:child_process';
import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import { aptInstall, INSTALL_TIMEOUT_MS, isRoot } from './apt-install';
import { programStarts } from './program-starts';
import { usualChromiumPlaces } from './usual-chromium-places';

const run = promisify(execFile);

/** Where a distribution that has it keeps it. */
const HEADLESS_SHELL = '/usr/bin/chromium-headless-shell';

/**
 * The path of a Chromium that starts. Takes the one named by LEEWAY_CHROMIUM, else one installed
 * in a usual place, else installs one.
 *
 * @throws Error with one sentence saying what to do, if there is none and none can be installed.
 */
export async function getChromium(): Promise<string> {
  const named = process.env.LEEWAY_CHROMIUM;
  if (named) {
    if (await programStarts(named)) return named;
    throw new Error(`LEEWAY_CHROMIUM names ${named}, which does not start: please correct it.`);
  }
  const found = (await findInstalled()) ?? (await installOne());
  if (found) return found;
  throw new Error(
    'The browser tests need a Chromium and none could be found or installed: please install ' +
      'Chromium or Google Chrome, or set LEEWAY_CHROMIUM to the path of one, and run this again.',
  );
}

/**
 * The path of Chromium's shell without a window, which starts in a third of the time, and of a
 * whole Chromium where the shell cannot be had or another browser is named.
 */
export async function getHeadlessShell(): Promise<string> {
  if (process.env.LEEWAY_CHROMIUM) return getChromium();
  if (!existsSync(HEADLESS_SHELL)) await aptInstall('chromium-headless-shell').catch(console.warn);
  return (await programStarts(HEADLESS_SHELL)) ? HEADLESS_SHELL : getChromium();
}

async function findInstalled(): Promise<string | undefined> {
  for (const path of usualChromiumPlaces()) {
    if (await programStarts(path)) return path;
  }
  return undefined;
}

async function installOne(): Promise<string | undefined> {
  for (const install of [installFromDistribution, downloadFromPlaywright]) {
    try {
      await install();
      const path = await findInstalled();
      if (path) return path;
    } catch (error) {
      console.warn(String(error));
    }
  }
  return undefined;
}

const installFromDistribution = () =>
  aptInstall('chromium', 'chromium-headless-shell', 'fonts-dejavu-core');

async function downloadFromPlaywright(): Promise<void> {
  console.warn('No Chromium here yet: downloading one.');
  const cli = join(dirname(createRequire(import.meta.url).resolve('playwright-core')), 'cli.js');
  // Only root can add the libraries it needs.
  const libraries = isRoot() && process.platform === 'linux' ? ['--with-deps'] : [];
  await run(process.execPath, [cli, 'install', '--no-shell', ...libraries, 'chromium'], {
    timeout: INSTALL_TIMEOUT_MS,
    maxBuffer: Number.POSITIVE_INFINITY,
  });
}
