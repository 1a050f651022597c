/** How long saving may hold a reload up. */
const PATIENCE_MS = 1000;

/**
 * A function that saves, then reloads, however often it is called: several signs of one update
 * must not make a reload loop.
 *
 * @param save awaited for at most a second; its failure does not stop the reload.
 */
export function reloadOnce(save: () => Promise<unknown>, reload: () => void): () => Promise<void> {
  let started = false;
  return async () => {
    if (started) return;
    started = true;
    try {
      await Promise.race([save(), new Promise((resolve) => setTimeout(resolve, PATIENCE_MS))]);
    } catch {
      // An update must not be held up by a draft that cannot be saved.
    }
    reload();
  };
}
