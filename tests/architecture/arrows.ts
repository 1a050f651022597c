import { posix } from 'node:path';
import type { Import, SourceFile } from './source-tree';

interface Place {
  /** Folders whose values it may import; its own is always allowed. */
  readonly from: readonly string[];
  /** Folders of which it may import types and nothing that runs. */
  readonly typesFrom?: readonly string[];
  /** Packages it may import. */
  readonly packages: readonly string[];
}

const MIDDLE = ['diagram', 'worker', 'store', 'units', 'words', 'sensors', 'offline'];

/** Who may import whom. What is not here is refused. */
const PLACES: Readonly<Record<string, Place>> = {
  engine: { from: [], packages: [] },
  units: { from: ['engine'], packages: [] },
  diagram: { from: ['engine', 'units'], packages: ['lean-qr/nano'] },
  // What the app says: whoever speaks to a person takes it from here.
  words: { from: ['engine', 'units'], typesFrom: ['store'], packages: [] },
  worker: { from: ['engine'], packages: [] },
  store: { from: ['engine', 'units'], packages: ['idb'] },
  sensors: { from: ['engine'], packages: [] },
  'service-worker': { from: [], packages: [] },
  offline: { from: ['engine', 'service-worker'], packages: [] },
  state: { from: ['engine', ...MIDDLE], packages: ['@preact/signals'] },
  // It shows physics and storage and does neither: it may know their shapes only.
  ui: {
    from: ['state', 'diagram', 'units', 'words'],
    typesFrom: ['engine', 'store'],
    packages: ['preact', 'preact/hooks', '@preact/signals'],
  },
  // What shows the last screen before anything else has run.
  'last-screen.ts': { from: ['sensors', 'store', 'ui'], packages: [] },
  'main.tsx': {
    from: ['engine', ...MIDDLE, 'state', 'ui', 'later', 'last-screen'],
    packages: ['preact', '@preact/signals'],
  },
  // What comes after the first answer, put together as that is.
  'later.ts': {
    from: ['engine', ...MIDDLE, 'state'],
    typesFrom: ['ui'],
    packages: ['@preact/signals'],
  },
  // It must run whatever becomes of the rest.
  'rescue.ts': { from: ['offline'], packages: [] },
  headless: { from: ['engine', 'words'], packages: ['node:*'] },
};

/**
 * The floors of the engine, the lowest first. A folder may import from below its floor, and not from
 * beside it.
 */
const FLOORS: readonly (readonly string[])[] = [
  ['numerics'],
  ['kit', 'ball', 'stroke'],
  ['impacts'],
  ['motion'],
  ['table', 'direct'],
  ['lie'],
  ['goal'],
  ['room', 'fit'],
  ['plan', 'player'],
  ['ways'],
  ['worth'],
];

const floorOf = (folder: string) => FLOORS.findIndex((floor) => floor.includes(folder));

/** The folder of the engine that a path lies in; null outside it. */
const engineFolder = (path: string) => /^src\/engine\/([^/]+)\//.exec(path)?.[1] ?? null;

/** Every import within the engine that does not lead down, in words. */
export function climbingImports(files: readonly SourceFile[]): string[] {
  return files.flatMap(({ path, imports }) => {
    const from = engineFolder(path);
    if (from === null) return [];
    return imports
      .filter(({ specifier }) => specifier.startsWith('.'))
      .filter(({ specifier }) => {
        const to = engineFolder(posix.join(posix.dirname(path), specifier));
        return to !== null && to !== from && !(floorOf(to) < floorOf(from));
      })
      .map(({ specifier }) => `${path} must not import ${specifier}`);
  });
}

/** Folders of the engine that are on no floor. */
export function foldersOnNoFloor(files: readonly SourceFile[]): string[] {
  const folders = new Set(files.flatMap(({ path }) => engineFolder(path) ?? []));
  return [...folders].filter((folder) => floorOf(folder) < 0);
}

/** Folders of src and files directly in it. */
export const KNOWN_PLACES: readonly string[] = [...Object.keys(PLACES), 'vite-env.d.ts'];

/** The first step below src: a folder's name, or a file's. */
export const placeOf = (path: string): string => path.split('/')[1] ?? '';

/** Every import that goes against the arrows, in words. */
export function brokenArrows(files: readonly SourceFile[]): string[] {
  return files.flatMap((file) => {
    const place = PLACES[placeOf(file.path)];
    if (!place) return [];
    return file.imports
      .filter((wanted) => !isAllowed(file.path, place, wanted))
      .map(({ specifier }) => `${file.path} must not import ${specifier}`);
  });
}

function isAllowed(path: string, place: Place, { specifier, typesOnly }: Import): boolean {
  if (!specifier.startsWith('.')) return place.packages.some((name) => names(name, specifier));
  const target = posix.join(posix.dirname(path), specifier);
  if (!target.startsWith('src/')) return false;
  const to = placeOf(target);
  return (
    to === placeOf(path) ||
    place.from.includes(to) ||
    (typesOnly && (place.typesFrom ?? []).includes(to))
  );
}

const names = (name: string, specifier: string) =>
  name.endsWith(':*') ? specifier.startsWith(name.slice(0, -1)) : specifier === name;

/** Rings of files that import one another, each as the path around it. */
export function importCycles(files: readonly SourceFile[]): string[] {
  const byStem = new Map(files.map((file) => [file.path.replace(/\.tsx?$/, ''), file]));
  const done = new Set<string>();
  const cycles: string[] = [];

  const visit = (file: SourceFile, trail: readonly string[]) => {
    const seenAt = trail.indexOf(file.path);
    if (seenAt >= 0) {
      cycles.push([...trail.slice(seenAt), file.path].join(' → '));
      return;
    }
    if (done.has(file.path)) return;
    for (const { specifier } of file.imports) {
      const next = byStem.get(posix.join(posix.dirname(file.path), specifier));
      if (next) visit(next, [...trail, file.path]);
    }
    done.add(file.path);
  };
  for (const file of files) visit(file, []);
  return cycles;
}
