import { mkdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, isAbsolute, join, relative, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';

const PROJECT = resolve(import.meta.dirname, '../../..');
/** Where bundles are kept, within a project. */
const FOLDER = 'node_modules/.cache/leeway';

/**
 * Bundles a script of TypeScript into one of plain JavaScript, unless that was done and none of its
 * sources has changed since. A loader that compiles in memory would wrap every closure for its name's
 * sake: the engine takes twice as long so.
 *
 * @param {string} entry the script, as a path from the project's root
 * @param {string} project the project's root
 * @returns {Promise<string>} the address to import
 * @throws {Error} where it cannot be built
 */
export async function bundled(entry, project = PROJECT) {
  const file = join(project, FOLDER, entry.replace(/\.ts$/, '.mjs'));
  if (isFresh(file, project)) return pathToFileURL(file).href;
  const code = await built(entry, project);
  try {
    put(code, file);
    return pathToFileURL(file).href;
  } catch {
    // Where nothing can be written it runs from memory.
    return `data:text/javascript;base64,${Buffer.from(code).toString('base64')}`;
  }
}

/**
 * Whether a bundle is there, and each of its sources as it was then. A bundle's first line names
 * them: a newer one is no surer sign than an older one, which may have come back from elsewhere.
 *
 * @param {string} file
 * @param {string} project
 */
function isFresh(file, project) {
  try {
    const [line = ''] = readFileSync(file, 'utf8').split('\n', 1);
    const stamps = Object.entries(JSON.parse(line.slice(COMMENT.length)));
    return stamps.every(([path, stamp]) => stampOf(join(project, path)) === stamp);
  } catch {
    return false;
  }
}

const COMMENT = '// ';

/**
 * When a file was written, and how long it is.
 *
 * @param {string} path
 */
function stampOf(path) {
  const { mtimeMs, size } = statSync(path);
  return `${mtimeMs} ${size}`;
}

/**
 * @param {string} entry
 * @param {string} project
 */
async function built(entry, project) {
  // It takes a while to load, and is seldom needed.
  const { rolldown } = await import('rolldown');
  /** @type {Record<string, string>} */
  const stamps = {};
  /** @param {string} path */
  const note = (path) => {
    stamps[relative(project, path).replaceAll('\\', '/')] = stampOf(path);
  };
  note(import.meta.filename);
  const bundle = await rolldown({
    input: join(project, entry),
    platform: 'node',
    external: /^[^./]/,
    plugins: [
      {
        name: 'note-sources',
        // Before it is read: what is written meanwhile makes the bundle an old one.
        load(id) {
          if (isAbsolute(id)) note(id);
        },
      },
    ],
  });
  const { output } = await bundle.generate({ format: 'esm', codeSplitting: false });
  await bundle.close();
  const [{ code }] = output;
  return `${COMMENT}${JSON.stringify(stamps)}\n${code}`;
}

/**
 * Puts a file in its place in one go: whoever starts meanwhile finds the former or this one, whole.
 *
 * @param {string} code
 * @param {string} file
 */
function put(code, file) {
  const fresh = `${file}.${process.pid}`;
  try {
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(fresh, code);
    renameSync(fresh, file);
  } catch (error) {
    rmSync(fresh, { force: true });
    throw error;
  }
}
