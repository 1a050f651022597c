/** How to start the engine beside the page; null where the browser has no workers. */
export function findEngineWorker(): (() => Worker) | null {
  if (!('Worker' in globalThis)) return null;
  return () => new Worker(new URL('./engine-worker.ts', import.meta.url), { type: 'module' });
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
