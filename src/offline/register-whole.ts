import { hasStoredFiles } from './stored-files';

const ATTEMPTS = 5;
const PAUSE_MS = 1000;

/**
 * Registers a service worker that has its files. While another tab still lives by a worker that was
 * unregistered, registering brings that one back, with whatever is left of its files and without
 * fetching any: it is let go again until the tab has been loaded anew.
 */
export async function registerWhole(
  register: () => Promise<ServiceWorkerRegistration | undefined>,
): Promise<ServiceWorkerRegistration | undefined> {
  for (let attempt = 1; ; attempt += 1) {
    const registration = await register();
    if (!registration?.active || attempt === ATTEMPTS) return registration;
    if (await hasStoredFiles(registration.scope)) return registration;
    await registration.unregister();
    await new Promise((resolve) => setTimeout(resolve, PAUSE_MS));
  }
}
