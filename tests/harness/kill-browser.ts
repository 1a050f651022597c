import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import type { BrowserContext } from 'playwright-core';

/**
 * Kills a browser and all its processes at once, as a phone does that runs out of memory; nothing
 * of it is asked to finish. Its first process, which leads their group, was started with the profile.
 */
export async function killBrowser(context: BrowserContext, profile: string): Promise<void> {
  const { stdout } = await promisify(execFile)('ps', ['-eww', '-o', 'pid=,args='], BIG);
  const first = stdout
    .split('\n')
    .find((line) => line.includes(`--user-data-dir=${profile}`) && !line.includes('--type='));
  if (!first) throw new Error(`no browser runs in ${profile}`);
  const gone = new Promise((resolve) => context.on('close', resolve));
  process.kill(-Number.parseInt(first, 10), 'SIGKILL');
  await gone;
}

/** A list of all processes may be long. */
const BIG = { maxBuffer: 64 * 1024 * 1024 };
