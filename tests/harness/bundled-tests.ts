import { readdirSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { rolldown } from 'rolldown';
import type { Plugin } from 'vite';

/** Where Node itself loads what the tests share: the runner takes nothing from here to pieces. */
const FOLDER = resolve('node_modules/.cache/leeway-tests');

/**
 * Bundles test files, and all of the project's code that they use into one chunk for all of them.
 * Through the runner's own modules every call goes by a getter of a module's exports; the engine's
 * inner loops pay for that with half as much time again. Node loads the chunk once a worker.
 *
 * Off while the runner watches, and where it is to find the tests of what has changed: what is
 * bundled imports nothing that it could follow.
 *
 * @param folders whose `*.test.ts` are bundled
 */
export function bundledTests(folders: readonly string[], mode: string): Plugin {
  const entries = new Map(
    folders.flatMap(testsBelow).map((path, index) => [path, `test-${index}`] as const),
  );
  let isOn = true;
  return {
    name: 'bundled-tests',
    enforce: 'pre',
    configResolved: ({ server }) => {
      isOn = server.watch === null && mode !== 'check';
    },
    async buildStart() {
      if (isOn) await bundle(entries, mode);
    },
    async load(id) {
      const entry = isOn ? entries.get(id) : undefined;
      if (entry === undefined) return null;
      const file = `${FOLDER}/${entry}.mjs`;
      const code = await readFile(file, 'utf8');
      const map = await readFile(`${file}.map`, 'utf8');
      return { code: code.replaceAll(/(from |import )"\.\//g, `$1"${FOLDER}/`), map };
    },
  };
}

function testsBelow(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.test.ts'))
    .map((path) => resolve(folder, path));
}

async function bundle(entries: ReadonlyMap<string, string>, mode: string): Promise<void> {
  const built = await rolldown({
    input: Object.fromEntries([...entries].map(([path, name]) => [name, path])),
    platform: 'node',
    external: /^[^./]/,
    transform: { define: { 'import.meta.env.MODE': JSON.stringify(mode) } },
  });
  await built.write({
    dir: FOLDER,
    format: 'esm',
    sourcemap: true,
    entryFileNames: '[name].mjs',
    chunkFileNames: '[name].mjs',
    codeSplitting: { groups: [{ name: 'shared', test: (id) => !id.endsWith('.test.ts') }] },
  });
  await built.close();
}
