/**
 * Calls `onReady` whenever a worker newer than the active one has been downloaded: one that was
 * waiting when the page opened, one being installed now, and every later one. A download that
 * breaks off is not reported, and the next attempt is watched afresh.
 */
export function watchForUpdate(registration: ServiceWorkerRegistration, onReady: () => void): void {
  const follow = (worker: ServiceWorker | null) => {
    worker?.addEventListener('statechange', () => {
      // Without an active worker this is the very first one, which replaces nothing.
      if (worker.state === 'installed' && registration.active) onReady();
    });
  };
  if (registration.waiting) onReady();
  follow(registration.installing);
  registration.addEventListener('updatefound', () => follow(registration.installing));
}
