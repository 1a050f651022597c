import type { Asked, Outcome, Told } from './engine-messages';

/** The worker's side of the line to the page. */
export interface JobLine {
  addEventListener(type: 'message', listener: (event: MessageEvent<Asked>) => void): void;
  postMessage(told: Told): void;
}

/** Work by its name, each of one job. */
type Works = { readonly [name: string]: (job: never) => unknown };

/** Works out every job that is asked for, and tells what came of it. */
export function answerJobs(line: JobLine, works: Works): void {
  line.addEventListener('message', ({ data: { id, name, job } }) => {
    line.postMessage({ id, ...outcomeOf(works[name], job) });
  });
}

function outcomeOf(work: ((job: never) => unknown) | undefined, job: unknown): Outcome {
  if (work === undefined) return { ok: false, message: 'There is no such work.' };
  try {
    return { ok: true, result: work(job as never) };
  } catch (error) {
    return { ok: false, message: error instanceof Error ? error.message : String(error) };
  }
}
