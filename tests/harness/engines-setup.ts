import { existsSync } from 'node:fs';
import type { EngineName } from './engines/engine-page';
import { getFirefox, getWebKit } from './engines/get-engines';

const GET: Record<EngineName, () => Promise<unknown>> = { Firefox: getFirefox, WebKit: getWebKit };

/**
 * Before the first test in the other engines: the browsers and a build. On a build server a
 * missing browser ends the run; elsewhere its tests fail, and the run says so once more at its end.
 */
export default async function setup(): Promise<() => void> {
  if (!existsSync('dist/index.html')) {
    throw new Error('There is no build to test yet: run `npm run build` first, or `npm test`.');
  }
  const missing: string[] = [];
  for (const [engine, get] of Object.entries(GET)) {
    try {
      await get();
    } catch (error) {
      if (process.env.CI) throw error;
      missing.push(`${engine.toUpperCase()} WAS NOT TESTED. ${(error as Error).message}`);
    }
  }
  return () => {
    for (const line of missing) console.error(line);
  };
}
