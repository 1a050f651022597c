import { execFile } from 'node:child_process';
import { mkdtemp } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';

const run = promisify(execFile);

/** What the next version of the app says of itself in the page, and this one does not. */
export const NEXT_VERSION_MARK = 'next-version';

/**
 * Builds the app once more into a folder of its own, as a later release: its page and its script
 * differ from those in dist, as their hashes do.
 *
 * @returns the folder, which the caller removes.
 */
export async function buildNextVersion(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'leeway-next-'));
  const vite = join(createRequire(import.meta.url).resolve('vite/package.json'), '../bin/vite.js');
  const config = 'tests/harness/next-version.vite.config.ts';
  await run(process.execPath, [vite, 'build', '--config', config, '--outDir', folder], {
    env: { ...process.env, NODE_ENV: 'production' },
  });
  return folder;
}
