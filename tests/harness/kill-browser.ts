import { readlink } from 'node:fs/promises';
import { join } from 'node:path';
import type { BrowserContext } from 'playwright-core';

/**
 * Kills a browser and all its processes at once, as a phone does that runs out of memory; nothing
 * of it is asked to finish. A Chromium names its first process, which leads their group, in its
 * profile, as host and number.
 */
export async function killBrowser(context: BrowserContext, profile: string): Promise<void> {
  const lock = await readlink(join(profile, 'SingletonLock'));
  const gone = new Promise((resolve) => context.on('close', resolve));
  process.kill(-Number(lock.split('-').at(-1)), 'SIGKILL');
  await gone;
}
