import { execFile } from 'node:child_process';
import { mkdtemp } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';

const run = promisify(execFile);

/**
 * Builds the app once more, as `npm run build` does, into a folder of its own.
 *
 * @param environment laid over the present one
 * @returns the folder, which the caller removes.
 */
export async function buildAnew(environment: Record<string, string> = {}): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'leeway-build-'));
  const vite = join(createRequire(import.meta.url).resolve('vite/package.json'), '../bin/vite.js');
  await run(process.execPath, [vite, 'build', '--outDir', folder, '--emptyOutDir'], {
    env: { ...process.env, NODE_ENV: 'production', ...environment },
  });
  return folder;
}
