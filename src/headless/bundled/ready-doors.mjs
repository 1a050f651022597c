import { readFileSync } from 'node:fs';
import { bundled } from './bundle.mjs';

/** Bundles every door that package.json opens, so that the first to use one need not wait. */
const { scripts } = JSON.parse(readFileSync('package.json', 'utf8'));
const doors = Object.values(scripts).flatMap((command) => {
  return /^node src\/headless\/bundled\/run\.mjs (src\/\S+)$/.exec(command)?.[1] ?? [];
});
try {
  await Promise.all(doors.map((door) => bundled(door)));
} catch (error) {
  // What it lacks now may be there by then.
  console.error(`The doors will be bundled at their first use: ${error}`);
}
