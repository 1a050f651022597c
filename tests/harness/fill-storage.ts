import type { Page } from 'playwright-core';

/** Writes into a database of its own until there is no room for another byte or so. */
export async function fillStorage(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const database = await new Promise<IDBDatabase>((resolve) => {
      const opening = indexedDB.open('filler', 1);
      opening.onupgradeneeded = () =>
        opening.result.createObjectStore('all', { autoIncrement: true });
      opening.onsuccess = () => resolve(opening.result);
    });
    const noise = () => Math.random() * 256;
    const takes = (bytes: number) =>
      new Promise<boolean>((resolve) => {
        const transaction = database.transaction('all', 'readwrite');
        // Noise: a database may press anything else together.
        transaction.objectStore('all').put(Uint8Array.from({ length: bytes }, noise));
        transaction.oncomplete = () => resolve(true);
        transaction.onabort = () => resolve(false);
      });
    for (const bytes of [200_000, 20_000, 2000, 300]) {
      while (await takes(bytes));
    }
    database.close();
  });
}
