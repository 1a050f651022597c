import { execFile } from 'node:child_process';
import { existsSync } from 'node:fs';
import { promisify } from 'node:util';

const run = promisify(execFile);
export const INSTALL_TIMEOUT_MS = 8 * 60_000;

export const isRoot = () => process.getuid?.() === 0;

/** Installs packages of the distribution, where there is apt-get and it may. */
export async function aptInstall(...packages: string[]): Promise<void> {
  if (!isRoot() || !existsSync('/usr/bin/apt-get')) return;
  console.warn(`Installing the distribution’s own ${packages[0]}.`);
  await apt('update');
  await apt('install', '-y', '--no-install-recommends', ...packages);
}

async function apt(...args: string[]): Promise<void> {
  await run('apt-get', ['-o', 'DPkg::Lock::Timeout=300', ...args], {
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    timeout: INSTALL_TIMEOUT_MS,
    maxBuffer: Number.POSITIVE_INFINITY,
  });
}
