import { execFile } from 'node:child_process';
import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';

const run = promisify(execFile);

/** The versions of the database's layout that there is an older build for. */
export const OLDER_SCHEMAS = [1, 2, 3, 4] as const;

/**
 * Unpacks the build that a player of that time has on their phone; see tests/fixtures/README.md.
 *
 * @returns its folder, which the caller removes.
 */
export async function unpackOlderVersion(schema: (typeof OLDER_SCHEMAS)[number]): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), `leeway-schema-${schema}-`));
  await run('tar', ['-xzf', `tests/fixtures/schema-${schema}.tar.gz`, '-C', folder]);
  return folder;
}
