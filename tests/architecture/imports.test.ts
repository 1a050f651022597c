import { existsSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  brokenArrows,
  climbingImports,
  foldersOnNoFloor,
  importCycles,
  KNOWN_PLACES,
  placeOf,
} from './arrows';
import { listFiles, parseSource, readSources } from './source-tree';

const sources = readSources('src');

describe('the source tree', () => {
  it('lies in known places only', () => {
    const places = new Set(listFiles('src').map(placeOf));
    expect([...places].filter((place) => !KNOWN_PLACES.includes(place))).toEqual([]);
  });

  it('imports along the arrows only', () => {
    expect(sources.length).toBeGreaterThan(20);
    expect(brokenArrows(sources)).toEqual([]);
  });

  it('imports downwards only within the engine, all of whose folders are on a floor', () => {
    expect(foldersOnNoFloor(sources)).toEqual([]);
    expect(climbingImports(sources)).toEqual([]);
  });

  it('imports files that exist', () => {
    const missing = sources.flatMap(({ path, imports }) =>
      imports
        .filter(({ specifier }) => specifier.startsWith('.'))
        .map(({ specifier }) => posix.join(posix.dirname(path), specifier))
        .filter((stem) => !['.ts', '.tsx', ''].some((ending) => existsSync(stem + ending)))
        .map((stem) => `${path} imports ${stem}`),
    );
    expect(missing).toEqual([]);
  });

  it('has no two files that import each other, however far round', () => {
    expect(importCycles(sources)).toEqual([]);
  });

  it('gives each thing one door: no barrels', () => {
    const barrels = sources.filter(
      ({ path, reExports }) => /\/index\.tsx?$/.test(path) || reExports.length > 0,
    );
    expect(barrels.map(({ path }) => path)).toEqual([]);
  });

  it('loads late by two doors alone, where all of it is fetched once the first answer stands', () => {
    const late = sources.filter(({ code }) => /\bimport\s*\(/.test(code));
    expect(late.map(({ path }) => path)).toEqual([
      // The app itself, by the address that the page has of it, and nothing by its name.
      'src/last-screen.ts',
      'src/main.tsx',
      'src/ui/late-parts.tsx',
    ]);
    const [{ imports } = { imports: [] }] = late;
    expect(imports.filter(({ specifier }) => /main|later/.test(specifier))).toEqual([]);
  });

  it('keeps markup in ui and main.tsx', () => {
    const markup = sources.filter(({ path }) => path.endsWith('.tsx'));
    expect(markup.map(({ path }) => placeOf(path)).filter((p) => p !== 'ui')).toEqual(['main.tsx']);
  });

  it('gives no component all models, but what hands them on and a place that leaves two out', () => {
    const takers = sources.filter(({ code }) => /\bAppModels\b/.test(code));
    expect(takers.map(({ path }) => path).sort()).toEqual([
      'src/later.ts',
      'src/ui/app-models.ts',
      'src/ui/kit/KitPlace.tsx',
      'src/ui/late-parts.tsx',
    ]);
  });

  it.each([
    ['src', 250],
    ['tests', 300],
  ] as const)('has no file in %s over %d lines', (folder, most) => {
    const written = listFiles(folder).filter((path) => /\.(tsx?|css)$/.test(path));
    const long = written.filter((path) => readFileSync(path, 'utf8').split('\n').length > most + 1);
    expect(long).toEqual([]);
  });
});

describe('the arrow check', () => {
  const broken = (path: string, text: string) => brokenArrows([parseSource(path, text)]);

  it.each([
    ['src/engine/direct/shot.ts', "import { a } from '../../units/a';"],
    ['src/engine/direct/shot.ts', "import type { A } from '../../units/a';"],
    ['src/engine/direct/shot.ts', "import { openDB } from 'idb';"],
    ['src/units/a.ts', "import { a } from '../store/a';"],
    ['src/diagram/a.ts', "import { h } from 'preact';"],
    ['src/state/a.ts', "import { A } from '../ui/A';"],
    ['src/ui/A.tsx', "import { solveAim } from '../engine/direct/solve-aim';"],
    ['src/ui/A.tsx', "import { type Shot, solveAim } from '../engine/direct/solve-aim';"],
    ['src/ui/A.tsx', "import '../store/open-store';"],
    ['src/ui/A.tsx', "const a = () => import('../store/open-store');"],
    ['src/headless/lookup.ts', "import { lengthUnit } from '../units/length-unit';"],
    ['src/store/a.ts', "import { fake } from '../../tests/fake';"],
  ])('refuses %s: %s', (path, text) => {
    expect(broken(path, text)).toHaveLength(1);
  });

  it.each([
    ['src/engine/direct/shot.ts', "import { DEFAULT_KIT } from '../kit/kit';"],
    ['src/state/a.ts', "import { solveAim } from '../engine/direct/solve-aim';"],
    ['src/ui/A.tsx', "import type { Shot } from '../engine/direct/shot';"],
    ['src/ui/A.tsx', "import './A.css';"],
    ['src/headless/lookup.ts', "import { createInterface } from 'node:readline';"],
  ])('allows %s: %s', (path, text) => {
    expect(broken(path, text)).toEqual([]);
  });

  it.each([
    ['src/engine/table/a.ts', "import type { A } from '../goal/a';", 1],
    ['src/engine/table/a.ts', "import { a } from '../direct/a';", 1],
    ['src/engine/room/a.ts', "import { a } from '../goal/a';", 0],
    ['src/engine/room/a.ts', "import { b } from './b';", 0],
  ])('counts what climbs in %s: %s', (path, text, count) => {
    expect(climbingImports([parseSource(path, text)])).toHaveLength(count);
  });

  it('tells the way around a ring', () => {
    const ring = [
      parseSource('src/units/a.ts', "import './b';"),
      parseSource('src/units/b.ts', "import './c';"),
      parseSource('src/units/c.ts', "import './b';"),
    ];
    expect(importCycles(ring)).toEqual(['src/units/b.ts → src/units/c.ts → src/units/b.ts']);
  });
});
