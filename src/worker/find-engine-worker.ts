/**
 * How to start the engine beside the page; null where the browser has no workers.
 *
 * @param script the address of `engine-worker`, such that the content security policy lets it through
 */
export function findEngineWorker(script: string): (() => Worker) | null {
  if (!('Worker' in globalThis)) return null;
  return () => new Worker(script, { type: 'module' });
}

/** More would only take the phone's breath away. */
const MOST_WORKERS = 4;

/**
 * How many workers may work side by side.
 * @param cores how many the browser says there are; some do not say
 */
export function workerCount(cores: number | undefined): number {
  return Math.min(MOST_WORKERS, Math.max(1, cores ?? 1));
}
