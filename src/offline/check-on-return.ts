const MIN_INTERVAL_MS = 60_000;

/**
 * Calls `check` when the page comes back into view, at most once a minute. Phones keep an app
 * alive for weeks without ever loading it anew, and some never look for a newer version on resume.
 *
 * @param check may reject, as it does without a network; the next return tries again.
 */
export function checkOnReturn(check: () => Promise<unknown>): void {
  let lastMs = Date.now();
  const onReturn = () => {
    if (document.visibilityState !== 'visible' || Date.now() - lastMs < MIN_INTERVAL_MS) return;
    lastMs = Date.now();
    check().catch(() => undefined);
  };
  document.addEventListener('visibilitychange', onReturn);
  addEventListener('pageshow', onReturn);
}
