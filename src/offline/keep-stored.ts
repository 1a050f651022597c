import {
  ASKS,
  type Asked,
  type Role,
  type StoreNews,
  storeChannel,
} from '../service-worker/store-news';
import { createRetries } from './retries';

export interface KeepStoredPorts {
  /** The folder of the app. */
  readonly scope: string;
  register(): Promise<ServiceWorkerRegistration>;
  /** Called with every registration that there has been, once. */
  onRegistration(registration: ServiceWorkerRegistration): void;
  /** Whether everything that the next start needs is on this device, as the worker finds it. */
  onLooked(isWhole: boolean): void;
  /** A file does not come as it was built, and nobody has stored it. */
  onAltered(file: string): void;
}

/**
 * Has the app stored whole, and tries until it is: a network that needs a login answers with its own
 * page for any file, and a system that is short of room empties a cache behind a worker that stays.
 * So the files are asked about, and never the registration.
 *
 * @returns looks now, and fetches what is missing; never rejects
 */
export function keepStored(ports: KeepStoredPorts): () => Promise<void> {
  const { scope, register, onRegistration, onLooked, onAltered } = ports;
  const known = new WeakSet<EventTarget>();
  let registration: ServiceWorkerRegistration | undefined;
  let isWhole = false;
  const retries = createRetries(() => void look());

  async function look(): Promise<void> {
    retries.callOff();
    try {
      registration = await register();
    } catch {
      return later();
    }
    if (isNew(registration)) follow(registration);
    for (const as of ['active', 'waiting'] as const) ask(registration[as], as);
  }

  const isNew = (one: EventTarget) => !known.has(one) && known.add(one);

  function follow(one: ServiceWorkerRegistration) {
    onRegistration(one);
    const watch = () => {
      const worker = one.installing;
      if (!worker || !isNew(worker)) return;
      worker.addEventListener('statechange', () => {
        if (worker.state === 'activated') ask(worker, 'active');
        // One that breaks off leaves nothing, not even a registration, where it was the first.
        if (worker.state === 'redundant') later();
      });
    };
    watch();
    one.addEventListener('updatefound', watch);
  }

  const ask = (worker: ServiceWorker | null, as: Role) =>
    worker?.postMessage({ type: ASKS.fill, as } satisfies Asked);

  function later() {
    if (!isWhole) retries.again();
  }

  /** A newer version on the host has other files, and rightly so. */
  async function isOutdated(): Promise<boolean> {
    await registration?.update().catch(() => undefined);
    return Boolean(registration?.installing ?? registration?.waiting);
  }

  async function hear({ by, outcome }: StoreNews): Promise<void> {
    // A newer version that cannot be had yet takes nothing from the one that is here.
    if (by !== 'active' && registration?.active) return;
    isWhole = by === 'active' && outcome.kind === 'whole';
    if (by === 'active') onLooked(isWhole);
    if (isWhole) retries.startOver();
    if (outcome.kind === 'whole') return;
    later();
    if (outcome.kind !== 'altered') return;
    if (by === 'installing' || !(await isOutdated())) onAltered(outcome.file);
  }

  storeChannel(scope).addEventListener('message', ({ data }) => void hear(data as StoreNews));
  addEventListener('online', () => {
    if (!isWhole) void look();
  });
  void look();
  return look;
}
