import { existsSync } from 'node:fs';
import type { EngineName } from './engines/engine-page';
import { getFirefox, getWebKit } from './engines/get-engines';
import { raiseFlagAfter } from './engines-fetched';

const GET: Record<EngineName, () => Promise<unknown>> = { Firefox: getFirefox, WebKit: getWebKit };

/**
 * Before the first test in the other engines: a build; and the browsers, which are fetched while
 * the tests before them run. The tests of a missing one fail, and the run says so at its end.
 */
export default async function setup(): Promise<() => Promise<void>> {
  if (!existsSync('dist/index.html')) {
    throw new Error('There is no build to test yet: run `npm run build` first, or `npm test`.');
  }
  const missing: string[] = [];
  const lowerFlag = await raiseFlagAfter(fetchAll(missing));
  return async () => {
    await lowerFlag();
    for (const line of missing) console.error(line);
  };
}

/** One after the other: two installations at once would be in each other's way. */
async function fetchAll(missing: string[]): Promise<void> {
  for (const [engine, get] of Object.entries(GET)) {
    await get().catch((error: Error) => {
      missing.push(`${engine.toUpperCase()} WAS NOT TESTED. ${error.message}`);
    });
  }
}
