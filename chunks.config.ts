import type { Rolldown } from 'vite';

type Graph = Parameters<Rolldown.CodeSplittingNameFunction>[1];

const MAIN = 'src/main.tsx';
const WORKER = 'src/worker/engine-worker.ts';
const RESCUE = 'src/rescue.ts';
/** What shows the last screen, the first of all to run. */
const SHOWN = 'src/last-screen.ts';
/** Each is started by its own address. */
const APART = [WORKER, RESCUE];

/** Whoever has speeds told in table lengths waits for it with the first answer. */
const RUNS = 'src/units/table-run.ts';

/** The modules that a set of them imports, and so on, but for what they import late. */
function closure(roots: readonly string[], graph: Graph): ReadonlySet<string> {
  const found = new Set(roots);
  for (const id of found) {
    for (const next of graph.getModuleInfo(id)?.importedIds ?? []) found.add(next);
  }
  return found;
}

interface Reached {
  /** By what must run whatever becomes of the rest. */
  readonly rescue: ReadonlySet<string>;
  readonly shown: ReadonlySet<string>;
  readonly first: ReadonlySet<string>;
  readonly worker: ReadonlySet<string>;
  /** By what comes once the first answer stands. */
  readonly late: ReadonlySet<string>;
  /** The part of it that a start may wait for. */
  readonly runs: ReadonlySet<string>;
}

function reachOf(root: string, graph: Graph): Reached {
  const first = closure([`${root}/${MAIN}`], graph);
  const late = [...first].flatMap((id) => graph.getModuleInfo(id)?.dynamicallyImportedIds ?? []);
  return {
    rescue: closure([`${root}/${RESCUE}`], graph),
    shown: closure([`${root}/${SHOWN}`], graph),
    first,
    worker: closure([`${root}/${WORKER}`], graph),
    late: closure(late, graph),
    runs: closure([`${root}/${RUNS}`], graph),
  };
}

/**
 * Which script a module goes into; null leaves it with the one entry that needs it. The page starts
 * the first screen's script itself, so that nothing is asked for only once another has come. What it
 * needs of the engine lies in a script that the page and its workers load alike, what only
 * later parts and workers need in another. All that comes late comes in one script: each that it is
 * parted into names anew what it shares with the others.
 *
 * @param root the project's folder, with slashes
 */
export function chunkByReach(root: string): Rolldown.CodeSplittingNameFunction {
  let reached: Reached | undefined;
  return (id, graph) => {
    reached ??= reachOf(root, graph);
    return APART.some((entry) => id.endsWith(entry)) ? null : chunkOf(id, reached);
  };
}

function chunkOf(id: string, { rescue, shown, first, worker, late, runs }: Reached): string | null {
  if (rescue.has(id)) return 'repair';
  if (shown.has(id)) return 'shown';
  if (first.has(id)) return worker.has(id) ? 'engine' : 'first';
  if (runs.has(id)) return 'engine-more';
  if (worker.has(id)) return late.has(id) ? 'engine-more' : null;
  return late.has(id) ? 'late' : null;
}
