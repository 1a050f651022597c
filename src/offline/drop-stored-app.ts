import { tellOfRepair } from './repair-news';
import { cachesOf } from './stored-files';

/**
 * `dropped`: the next load comes from the network. `unreachable`: nothing was touched, because the
 * server is away or has no whole app to give. `not-stored`: there is no stored app.
 */
export type DropOutcome = 'dropped' | 'unreachable' | 'not-stored';

/** Why nothing was done, as the person is told. */
export const NOT_DROPPED: Readonly<Record<Exclude<DropOutcome, 'dropped'>, string>> = {
  unreachable:
    'The server cannot be reached, or has no whole app to give. Nothing was changed: try again with a network.',
  'not-stored': 'This browser has no stored copy of the app: close this page and open it again.',
};

/**
 * Takes away the copy of the app that this device starts from, and never what the player keeps.
 * Without a server that would leave no app at all, so it is asked first: a service worker's script
 * is always fetched from the network, and one that is newer has to have fetched all that is new.
 */
export async function dropStoredApp({
  serviceWorker,
}: {
  readonly serviceWorker?: ServiceWorkerContainer;
} = navigator): Promise<DropOutcome> {
  const registration = await serviceWorker?.getRegistration();
  if (!registration) return 'not-stored';
  try {
    await registration.update();
    await untilWhole(registration.installing);
  } catch {
    return 'unreachable';
  }
  await registration.unregister();
  await Promise.all((await cachesOf(registration.scope)).map((name) => caches.delete(name)));
  tellOfRepair();
  return 'dropped';
}

const WHOLE: readonly ServiceWorkerState[] = ['installed', 'activating', 'activated'];

/** @throws Error where a file of the newer app cannot be had. */
function untilWhole(worker: ServiceWorker | null): Promise<void> {
  return new Promise((resolve, reject) => {
    const look = () => {
      if (worker?.state === 'redundant') reject(new Error('its download broke off'));
      else if (!worker || WHOLE.includes(worker.state)) resolve();
    };
    worker?.addEventListener('statechange', look);
    look();
  });
}
