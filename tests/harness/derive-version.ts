import { createHash } from 'node:crypto';
import { appendFile, cp, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { ShippedFile } from '../../src/service-worker/stored-app';

/**
 * Makes another release of the built app: its page and its script differ from those in dist, and
 * have digests of their own in the service worker's list, as those of a later build do.
 *
 * @param name what the page says of itself in `data-version`, once its script runs to the end
 * @param rewrite makes the entry script of the one in dist; left out, it stays as it is
 * @returns the folder, which the caller removes.
 */
export async function deriveVersion(
  name: string,
  rewrite: (script: string) => string = (script) => script,
): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), `leeway-${name}-`));
  await cp('dist', folder, { recursive: true });
  const entry = await entryOf(folder);
  const mark = `\ndocument.documentElement.dataset.version = ${JSON.stringify(name)};\n`;
  await change(join(folder, 'assets'), entry, (script) => rewrite(script) + mark);
  await renameWith(folder, entry, name.padEnd(8, '-').slice(0, 8));
  await listAnew(folder);
  return folder;
}

/** Renames a script, and all that name it: what they hold differs as well, as in a later build. */
async function renameWith(folder: string, script: string, hash: string): Promise<void> {
  const assets = join(folder, 'assets');
  const scripts = (await readdir(assets)).filter((file) => file.endsWith('.js'));
  const texts = new Map<string, string>();
  for (const file of scripts) texts.set(file, await readFile(join(assets, file), 'utf8'));
  const renamed = new Set([script]);
  for (const old of renamed) {
    for (const [file, text] of texts) if (text.includes(old)) renamed.add(file);
  }
  const inNewNames = (text: string) =>
    [...renamed].reduce((now, old) => now.replaceAll(old, hashed(old, hash)), text);
  for (const old of renamed) {
    await writeFile(join(assets, hashed(old, hash)), inNewNames(texts.get(old) ?? ''));
    await rm(join(assets, old));
  }
  await change(folder, 'index.html', inNewNames);
  await change(folder, 'sw.js', inNewNames);
}

const hashed = (file: string, hash: string) => file.replace(/[\w-]{8}\.js$/, `${hash}.js`);

/**
 * Makes a release that differs from the one in `folder` in every file, though it does the same.
 *
 * @returns its folder, which the caller removes.
 */
export async function deriveAllNew(folder: string): Promise<string> {
  const made = await mkdtemp(join(tmpdir(), 'leeway-all-new-'));
  await cp(folder, made, { recursive: true });
  for (const { url } of await listedFiles(made)) await appendFile(join(made, url), '\n');
  await listAnew(made);
  return made;
}

/** The list that a release's worker stores by. */
export async function listedFiles(folder: string): Promise<ShippedFile[]> {
  return listIn(await readFile(join(folder, 'sw.js'), 'utf8')).files;
}

function listIn(worker: string): { text: string; files: ShippedFile[] } {
  const [text = '[]'] = /\[\{"integrity":[^\]]*\]/.exec(worker) ?? [];
  return { text, files: JSON.parse(text) };
}

/** Gives every file the digest of what it holds now. */
async function listAnew(folder: string): Promise<void> {
  const { files } = listIn(await readFile(join(folder, 'sw.js'), 'utf8'));
  const listed = files.map(async (file) => {
    const digest = createHash('sha256').update(await readFile(join(folder, file.url)));
    return { ...file, integrity: `sha256-${digest.digest('base64')}` };
  });
  const text = JSON.stringify(await Promise.all(listed));
  await change(folder, 'sw.js', (worker) => worker.replace(listIn(worker).text, text));
}

async function entryOf(folder: string): Promise<string> {
  const page = await readFile(join(folder, 'index.html'), 'utf8');
  const entry = (await readdir(join(folder, 'assets'))).find(
    (file) => file.startsWith('first-') && file.endsWith('.js') && page.includes(file),
  );
  if (!entry) throw new Error('The page starts no script of that name');
  return entry;
}

/** @throws Error where there is nothing to change: the version would pass for the one it was. */
async function change(folder: string, file: string, edit: (text: string) => string) {
  const text = await readFile(join(folder, file), 'utf8');
  const changed = edit(text);
  if (changed === text) throw new Error(`${file} has nothing of that kind in it`);
  await writeFile(join(folder, file), changed);
}
