import { execFileSync } from 'node:child_process';
import {
  cp,
  mkdir,
  mkdtemp,
  readdir,
  readFile,
  realpath,
  rm,
  symlink,
  writeFile,
} from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { PlantedFault } from './planted-fault';

/** A copy of the project to do harm to. */
export interface TreeCopy {
  readonly folder: string;
  /** Does something with a fault in place, and takes the fault out again. */
  withFault<T>(fault: PlantedFault, work: () => Promise<T>): Promise<T>;
  remove(): Promise<void>;
}

/** All that version control knows of or would take in, as it stands now, and the packages. */
export async function copyTree(): Promise<TreeCopy> {
  const folder = await realpath(await mkdtemp(join(tmpdir(), 'leeway-faults-')));
  const listed = execFileSync('git', ['ls-files', '-co', '--exclude-standard', '-z'], {
    encoding: 'utf8',
  });
  const files = listed.split('\0').filter((file) => file !== '');
  for (const file of new Set(files)) {
    await cp(file, join(folder, file), { errorOnExist: false }).catch(ignoreMissing);
  }
  await linkPackages(join(folder, 'node_modules'));
  return {
    folder,
    async withFault({ file, find, replace }, work) {
      const path = join(folder, file);
      const sound = await readFile(path, 'utf8');
      await writeFile(
        path,
        sound.replace(find, () => replace),
      );
      try {
        return await work();
      } finally {
        await writeFile(path, sound);
      }
    },
    remove: () => rm(folder, { recursive: true, force: true, maxRetries: 5 }),
  };
}

/** Package by package, so that what tools keep beside them stays the copy's own. */
async function linkPackages(folder: string): Promise<void> {
  await mkdir(folder);
  for (const name of await readdir('node_modules')) {
    if (name.startsWith('.') && name !== '.bin') continue;
    await symlink(resolve('node_modules', name), join(folder, name));
  }
}

/** Deleted but not yet committed as such. */
function ignoreMissing(error: NodeJS.ErrnoException): void {
  if (error.code !== 'ENOENT') throw error;
}
