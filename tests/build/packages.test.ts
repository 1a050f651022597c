import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

interface Locked {
  readonly version?: string;
  readonly resolved?: string;
  readonly integrity?: string;
  readonly license?: string;
  readonly dev?: boolean;
  readonly link?: boolean;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly devDependencies?: Readonly<Record<string, string>>;
}

const read = (file: string) => JSON.parse(readFileSync(file, 'utf8')) as Locked;
const asked = read('package.json');
const lock = JSON.parse(readFileSync('package-lock.json', 'utf8')) as {
  readonly packages: Readonly<Record<string, Locked>>;
};
const { '': root, ...rest } = lock.packages;
const packages = Object.entries(rest);

/** Licences that let anyone use, change and pass on what they cover, and ask at most to be named. */
const FOR_WHAT_SHIPS = ['MIT', 'ISC'];

/** Those of tools too: what they are asked for concerns their own code, which never ships. */
const FOR_TOOLS = [
  ...FOR_WHAT_SHIPS,
  '0BSD',
  'Apache-2.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'BlueOak-1.0.0',
  'CC-BY-4.0',
  'MPL-2.0',
  'MIT OR Apache-2.0',
  '(MIT OR CC0-1.0)',
];

describe('the packages', () => {
  it('that ship are as many as DEVELOPERS says, and the first of its table', () => {
    const [, section = ''] = readFileSync('DEVELOPERS.md', 'utf8').split('## Packages, and why');
    expect(section).toContain('Four packages ship, those of the first three rows.');
    const rows = [...section.matchAll(/^\| ([^|]+) \|/gm)].map(([, names = '']) => names);
    const shipped = Object.keys(asked.dependencies ?? {});
    expect(rows.slice(1, 4).join(', ').split(', ').sort()).toEqual(shipped.sort());
    expect(shipped).toHaveLength(4);
  });

  it.each([
    ['ship', FOR_WHAT_SHIPS, packages.filter(([, { dev }]) => !dev)],
    ['are tools', FOR_TOOLS, packages.filter(([, { dev }]) => dev)],
  ] as const)('that %s have licences that allow it, in the lock file', (_, allowed, some) => {
    const others = some.filter(([, { license = 'none' }]) => !allowed.includes(license));
    expect(some.length).toBeGreaterThan(3);
    expect(others.map(([name, { license }]) => `${name}: ${license}`)).toEqual([]);
  });

  it('that ship say the same licence themselves', () => {
    for (const [folder, { dev, version, license }] of packages) {
      if (!dev) expect(read(`${folder}/package.json`), folder).toMatchObject({ version, license });
    }
  });

  it('are each held to what they are by a checksum, and to no one registry', () => {
    const loose = packages.filter(([, { integrity = '' }]) => !/^sha512-.{80,}/.test(integrity));
    expect(loose.map(([name]) => name)).toEqual([]);
    expect(packages.filter(([, { resolved, link }]) => resolved ?? link)).toEqual([]);
  });

  it('are asked for by exact version, the one the lock file has', () => {
    const wanted = { ...asked.dependencies, ...asked.devDependencies };
    for (const [name, version] of Object.entries(wanted)) {
      expect(rest[`node_modules/${name}`]?.version, name).toBe(version);
    }
    expect(root).toMatchObject({
      dependencies: asked.dependencies,
      devDependencies: asked.devDependencies,
    });
  });
});
