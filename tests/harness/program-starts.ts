import { execFile } from 'node:child_process';
import { existsSync } from 'node:fs';
import { promisify } from 'node:util';

const run = promisify(execFile);

/** A path may hold a stub which only says where the real program could be had, so it is run. */
export async function programStarts(path: string): Promise<boolean> {
  if (!existsSync(path)) return false;
  // There, asking a browser for its version opens a window.
  if (process.platform === 'win32') return true;
  try {
    await run(path, ['--version'], { timeout: 30_000 });
    return true;
  } catch {
    return false;
  }
}
