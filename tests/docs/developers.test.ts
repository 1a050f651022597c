import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';

const FILES = ['README.md', 'src/headless/README.md', 'DEVELOPERS.md'];
const DOCS = FILES.map((file) => readFileSync(file, 'utf8')).join('\n');
const PACKAGE = JSON.parse(readFileSync('package.json', 'utf8'));

describe('the documents', () => {
  it('mention only commands that exist, and every command that does', () => {
    const mentioned = [...DOCS.matchAll(/npm (?:run (?:-s )?)?([\w:]+)/g)]
      .map(([, name = '']) => name)
      .filter((name) => name !== 'ci');
    const scripts = Object.keys(PACKAGE.scripts);
    expect(mentioned.filter((name) => !scripts.includes(name))).toEqual([]);
    expect(scripts.filter((name) => !mentioned.includes(name))).toEqual([]);
  });

  it('map every folder of src, and none that is not there', () => {
    const mapped = [...DOCS.matchAll(/`src\/([\w-]+)\/`/g)].map(([, name = '']) => name);
    const folders = readdirSync('src', { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map((entry) => entry.name);
    expect([...new Set(mapped)].sort()).toEqual(folders.sort());
  });

  it('point at files that exist', () => {
    const links = FILES.flatMap((file) =>
      [...readFileSync(file, 'utf8').matchAll(/\]\(([\w./-]+)\)/g)].map(([, path = '']) =>
        join(dirname(file), path),
      ),
    );
    expect(links.length).toBeGreaterThan(3);
    expect(links.filter((path) => !existsSync(path))).toEqual([]);
  });

  it('give a reason for every package, and for none that is not used', () => {
    const table = DOCS.slice(DOCS.indexOf('| package | why |'));
    const named = [...table.matchAll(/^\| ([^|]+) \|/gm)].flatMap(([, cell = '']) =>
      cell.split(',').map((name) => name.trim()),
    );
    const used = Object.keys({ ...PACKAGE.dependencies, ...PACKAGE.devDependencies });
    const ours = named.filter((name) => name !== 'package' && !name.startsWith('-'));
    expect(ours.sort()).toEqual(used.filter((name) => !name.startsWith('@types/')).sort());
  });
});
