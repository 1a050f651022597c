import { existsSync, writeFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { INSTALL_TIMEOUT_MS } from './apt-install';

const FLAG = 'LEEWAY_ENGINES_FETCHED';

/**
 * Lets other tests run while the engines are being fetched, which is minutes on a bare machine.
 *
 * @returns how to clean up
 */
export async function raiseFlagAfter(fetching: Promise<unknown>): Promise<() => Promise<void>> {
  const flag = join(await mkdtemp(join(tmpdir(), 'leeway-fetched-')), 'flag');
  // Processes that are started from here on can read it.
  process.env[FLAG] = flag;
  const raised = fetching.then(() => writeFileSync(flag, ''));
  return async () => {
    await raised;
    await rm(dirname(flag), { recursive: true, force: true });
  };
}

/** Waits for what is being fetched, if anything is. */
export async function enginesFetched(): Promise<void> {
  const flag = process.env[FLAG];
  const end = Date.now() + 3 * INSTALL_TIMEOUT_MS;
  while (flag && !existsSync(flag) && Date.now() < end) {
    await new Promise((resolve) => setTimeout(resolve, 200));
  }
}
