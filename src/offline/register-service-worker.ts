import { Workbox } from 'workbox-window';
import { checkOnReturn } from './check-on-return';
import { registerWhole } from './register-whole';
import { reloadOnce } from './reload-once';
import { onRepairElsewhere } from './repair-news';
import { watchForUpdate } from './watch-for-update';
import { whenOfflineReady } from './when-offline-ready';

/** What the app is told about being offline and about newer versions of itself. */
export interface ServiceWorkerHandlers {
  /**
   * A newer version is downloaded and waiting. Nothing changes until `apply` is called; then every
   * open tab reloads once, a moment later. Called again when a still newer one arrives.
   */
  onUpdateReady(apply: () => void): void;
  /** Called once in a page's life, as soon as the next start needs no network. */
  onOfflineReady(): void;
}

/** `refused`: the browser will not, for instance outside a secure context or in private mode. */
export type ServiceWorkerOutcome = 'registered' | 'unsupported' | 'refused';

/**
 * Registers the service worker that lies beside the page, and keeps an eye out for newer versions.
 *
 * @param script the address of `sw.js`, such that the content security policy lets it through
 * @param beforeReload awaited for at most a second before this tab reloads; save drafts here. If
 *   it rejects, the reload goes ahead.
 * @returns what became of it; never rejects.
 */
export async function registerServiceWorker(
  script: string,
  handlers: ServiceWorkerHandlers,
  beforeReload: () => Promise<unknown> = async () => undefined,
): Promise<ServiceWorkerOutcome> {
  // That build's worker takes itself away and loads the page anew: for ever, were it registered.
  if (import.meta.env.LEEWAY_SELF_DESTROYING) return 'unsupported';
  if (!('serviceWorker' in navigator)) return 'unsupported';
  const container = navigator.serviceWorker;
  const reload = reloadOnce(beforeReload, () => location.reload());

  // Set before registering: a first worker may claim the page before `register` resolves.
  let mayReload = container.controller !== null;
  container.addEventListener('controllerchange', () => {
    // The first worker taking over a page that had none changes nothing on screen.
    if (mayReload) void reload();
    mayReload = true;
  });
  void whenOfflineReady(container).then(() => handlers.onOfflineReady());

  try {
    onRepairElsewhere(() => void reload());
    const workbox = new Workbox(script, { updateViaCache: 'none' });
    const registration = await registerWhole(() => workbox.register({ immediate: true }));
    if (registration === undefined) return 'unsupported';
    // Workbox's own `waiting` event falls silent after the first update it takes for another tab's;
    // a download that broke off would then never be offered again.
    watchForUpdate(registration, () => {
      handlers.onUpdateReady(() => {
        mayReload = true;
        // With no worker waiting the new one is in charge already and only this page is old.
        if (registration.waiting) workbox.messageSkipWaiting();
        else void reload();
      });
    });
    checkOnReturn(() => workbox.update());
    return 'registered';
  } catch {
    return 'refused';
  }
}
