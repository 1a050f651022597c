import { existsSync } from 'node:fs';
import { getChromium, getHeadlessShell } from './get-chromium';

/** Before the first browser test: a browser and a build to test, or a plain word why not. */
export default async function setup(): Promise<void> {
  if (!existsSync('dist/index.html')) {
    throw new Error('There is no build to test yet: run `npm run build` first, or `npm test`.');
  }
  await getChromium();
  await getHeadlessShell();
}
