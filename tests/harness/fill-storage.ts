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
    const takes = (bytes: number) =>
      new Promise<boolean>((resolve) => {
        const transaction = database.transaction('all', 'readwrite');
        transaction.objectStore('all').put(new Uint8Array(bytes));
        transaction.oncomplete = () => resolve(true);
        transaction.onabort = () => resolve(false);
      });
    for (const bytes of [200_000, 20_000, 2000, 300]) {
      while (await takes(bytes));
    }
    database.close();
  });
}
