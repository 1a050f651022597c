import type { WorkOut } from './find-priors';

/** As many as an evening's changing of cues and cloths asks for again and again. */
const MOST_REMEMBERED = 24;

/** Works out each job once: the same job gives the same report, while it is among the last asked. */
export function remembering(workOut: WorkOut): WorkOut {
  const known = new Map<string, ReturnType<WorkOut>>();
  return (job) => {
    const key = JSON.stringify(job);
    const working = known.get(key) ?? workOut(job);
    known.delete(key);
    known.set(key, working);
    for (const oldest of [...known.keys()].slice(0, -MOST_REMEMBERED)) known.delete(oldest);
    // What failed may go well the next time.
    working.catch(() => known.delete(key));
    return working;
  };
}
