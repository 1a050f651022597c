import { execFile } from 'node:child_process';
import { mkdtemp, readdir, readFile, rm, stat, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { promisify } from 'node:util';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { bundled } from '../../../src/headless/bundled/bundle.mjs';

const run = promisify(execFile);
/** A build needs some seconds on a busy machine. */
const TIMEOUT_MS = 300_000;

/** A project of two files. */
let project = '';
const write = (path: string, text: string) => writeFile(join(project, path), text);
const bundle = () => join(project, 'node_modules/.cache/leeway/greet.mjs');

beforeEach(async () => {
  project = await mkdtemp(join(tmpdir(), 'bundle-'));
  const greeting = "import { word } from './word';\nconst end: string = '!';\n";
  await write('greet.ts', `${greeting}console.log(word + end);\n`);
  await write('word.ts', "export const word: string = 'first';\n");
});
afterEach(() => rm(project, { recursive: true }));

/** What the script prints, run by a program of its own as the doors are. */
async function printed(): Promise<string> {
  const bundler = JSON.stringify(resolve('src/headless/bundled/bundle.mjs'));
  const script = `const { bundled } = await import(${bundler});
    await import(await bundled('greet.ts', process.cwd()));`;
  const node = ['--input-type=module', '--eval', script];
  const { stdout, stderr } = await run(process.execPath, node, { cwd: project });
  return stdout + stderr;
}

describe('a bundle', { timeout: TIMEOUT_MS }, () => {
  it('is built where there is none, prints nothing of its own, and is kept', async () => {
    expect(await printed()).toBe('first!\n');
    const { ino } = await stat(bundle());
    expect(await printed()).toBe('first!\n');
    expect((await stat(bundle())).ino).toBe(ino);
  });

  it('is built anew after a change, in whatever file and of whatever age', async () => {
    expect(await printed()).toBe('first!\n');
    await write('word.ts', "export const word: string = 'later';\n");
    expect(await printed()).toBe('later!\n');
    // As a copy from elsewhere comes: older than the bundle, and of the same length.
    await write('word.ts', "export const word: string = 'older';\n");
    await utimes(join(project, 'word.ts'), 1e9, 1e9);
    expect(await printed()).toBe('older!\n');
  });

  it('is built anew where it was cut short', async () => {
    await printed();
    for (const text of ['', '// {', 'console.log("torn");']) {
      await writeFile(bundle(), text);
      expect(await printed()).toBe('first!\n');
    }
  });

  it('is whole for everyone who starts at the same time, and leaves nothing else behind', async () => {
    expect(await Promise.all(Array.from({ length: 4 }, printed))).toEqual(
      Array.from({ length: 4 }, () => 'first!\n'),
    );
    expect(await readdir(join(bundle(), '..'))).toEqual(['greet.mjs']);
  });

  it('runs from memory where it cannot be kept', async () => {
    await write('node_modules', 'no folder');
    expect(await printed()).toBe('first!\n');
    expect(await readFile(join(project, 'node_modules'), 'utf8')).toBe('no folder');
  });

  it('is refused where the script cannot be read', async () => {
    await write('word.ts', 'export const word: string =;\n');
    await expect(bundled('greet.ts', project)).rejects.toThrow();
    await expect(bundled('gone.ts', project)).rejects.toThrow('gone.ts');
  });
});

describe('a script that cannot be built', () => {
  it('is told on standard error alone', { timeout: TIMEOUT_MS }, async () => {
    const gone = run(process.execPath, ['src/headless/bundled/run.mjs', 'src/headless/gone.ts']);
    await expect(gone).rejects.toMatchObject({ code: 1, stdout: '' });
    const { stderr } = await gone.catch((error) => error);
    expect(stderr).toMatch(/^src\/headless\/gone\.ts could not be built; /);
  });
});
