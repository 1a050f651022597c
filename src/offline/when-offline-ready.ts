/** Resolves once a service worker is active and answers for this very page. */
export async function whenOfflineReady(container: ServiceWorkerContainer): Promise<void> {
  await container.ready;
  if (container.controller) return;
  await new Promise<void>((resolve) => {
    container.addEventListener('controllerchange', () => resolve(), { once: true });
  });
}
