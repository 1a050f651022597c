import { ASKS, type Asked } from '../service-worker/store-news';
import { checkOnReturn } from './check-on-return';
import { keepStored } from './keep-stored';
import { reloadOnce } from './reload-once';
import { onRepairElsewhere } from './repair-news';
import { watchForUpdate } from './watch-for-update';

const TAKE_OVER: Asked = { type: ASKS.takeOver };

/** What the app is told about being offline and about newer versions of itself. */
export interface ServiceWorkerHandlers {
  /**
   * A newer version is downloaded and waiting. Nothing changes until `apply` is called; then every
   * open tab reloads once, a moment later. Called again when a still newer one arrives.
   */
  onUpdateReady(apply: () => void): void;
  /** Whether the next start needs no network: every file of the app is here, as it was built. */
  onLooked(isReadyOffline: boolean): void;
  /** The network, or the host, sends this file other than it was built; so it is not stored. */
  onAltered(file: string): void;
}

/**
 * Registers the service worker that lies beside the page, has it store the app whole, and keeps an
 * eye out for newer versions. Where the browser will not, it is tried again now and then.
 *
 * @param script the address of `sw.js`, such that the content security policy lets it through
 * @param beforeReload awaited for at most a second before this tab reloads; save drafts here. If
 *   it rejects, the reload goes ahead.
 */
export function registerServiceWorker(
  script: string,
  handlers: ServiceWorkerHandlers,
  beforeReload: () => Promise<unknown> = async () => undefined,
): void {
  // Sources are served without a worker. And the self-destroying build's worker takes itself away and loads the page anew: for ever, were it registered.
  if (import.meta.env.DEV || import.meta.env.LEEWAY_SELF_DESTROYING) return;
  if (!('serviceWorker' in navigator)) return;
  const container = navigator.serviceWorker;
  const reload = reloadOnce(beforeReload, () => location.reload());

  // Set before registering: a first worker may claim the page before `register` resolves.
  let mayReload = container.controller !== null;
  container.addEventListener('controllerchange', () => {
    // The first worker taking over a page that had none changes nothing on screen.
    if (mayReload) void reload();
    mayReload = true;
  });
  onRepairElsewhere(() => void reload());

  const look = keepStored({
    scope: new URL('./', document.baseURI).href,
    register: () => container.register(script, { updateViaCache: 'none' }),
    onLooked: handlers.onLooked,
    onAltered: handlers.onAltered,
    onRegistration(registration) {
      watchForUpdate(registration, () => {
        handlers.onUpdateReady(() => {
          mayReload = true;
          // With no worker waiting the new one is in charge already and only this page is old.
          if (registration.waiting) registration.waiting.postMessage(TAKE_OVER);
          else void reload();
        });
      });
    },
  });
  checkOnReturn(async () => {
    await look();
    await (await container.getRegistration())?.update();
  });
}
