import { bundled } from './bundle.mjs';

/** Runs a script of TypeScript: `node src/headless/bundled/run.mjs src/headless/lookup.ts`, and what it takes. */
const [entry = ''] = process.argv.splice(2, 1);
const address = await bundled(entry).catch((error) => {
  console.error(`${entry} could not be built; have the packages been installed? ${error.message}`);
  process.exit(1);
});
await import(address);
