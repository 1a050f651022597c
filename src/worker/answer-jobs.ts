import type { Asked, Outcome, Told } from './engine-messages';

/** The worker's side of the line to the page. */
export interface JobLine {
  addEventListener(type: 'message', listener: (event: MessageEvent<Asked>) => void): void;
  postMessage(told: Told): void;
}

/** Work by its name, each of one job; what takes long says now and then that it is still at it. */
type Works = { readonly [name: string]: (job: never, sayAtIt: () => void) => unknown };

/** How often the page is told that a job is still being worked out, ms. */
const SAY_EVERY_MS = 2000;

/**
 * Works out every job that is asked for, and tells what came of it.
 * @param now a clock that is never put back, ms
 */
export function answerJobs(line: JobLine, works: Works, now = () => performance.now()): void {
  line.addEventListener('message', ({ data: { id, name, job } }) => {
    let saidMs = now();
    const sayAtIt = () => {
      if (now() - saidMs < SAY_EVERY_MS) return;
      saidMs = now();
      line.postMessage({ id, isAtIt: true });
    };
    line.postMessage({ id, ...outcomeOf(works[name], job, sayAtIt) });
  });
}

function outcomeOf(work: Works[string] | undefined, job: unknown, sayAtIt: () => void): Outcome {
  if (work === undefined) return { ok: false, message: 'There is no such work.' };
  try {
    return { ok: true, result: work(job as never, sayAtIt) };
  } catch (error) {
    return { ok: false, message: error instanceof Error ? error.message : String(error) };
  }
}
