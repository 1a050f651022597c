import type { Page } from 'playwright-core';

/** All that lies in the app's database, as it lies there. */
export interface RawDatabase {
  readonly version: number;
  readonly stores: Readonly<Record<string, readonly Record<string, unknown>[]>>;
}

/** Reads every row of the app's database, by no code of the app's own. */
export async function readRawDatabase(page: Pick<Page, 'evaluate'>): Promise<RawDatabase> {
  return await page.evaluate(async () => {
    const opening = indexedDB.open('leeway');
    await new Promise((resolve, reject) => {
      opening.onsuccess = resolve;
      opening.onerror = () => reject(opening.error);
    });
    const database = opening.result;
    const names = [...database.objectStoreNames];
    const transaction = database.transaction(names);
    const rows = await Promise.all(
      names.map(async (name) => {
        const reading = transaction.objectStore(name).getAll();
        await new Promise((resolve, reject) => {
          reading.onsuccess = resolve;
          reading.onerror = () => reject(reading.error);
        });
        return [name, reading.result];
      }),
    );
    database.close();
    return { version: database.version, stores: Object.fromEntries(rows) };
  });
}

/** Puts rows into one of its stores, in the form they are given. */
export async function putRawRows(page: Page, store: string, rows: readonly object[]) {
  await page.evaluate(
    ([name, given]) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('leeway');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const transaction = opening.result.transaction(name, 'readwrite');
          for (const row of given) transaction.objectStore(name).put(row);
          transaction.onabort = () => reject(transaction.error);
          transaction.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    [store, rows] as const,
  );
}

/** Lays fields over the only row of a store, under whatever key it lies. */
export async function changeRawRow(page: Page, store: string, fields: object) {
  await page.evaluate(
    ([name, part]) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('leeway');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const transaction = opening.result.transaction(name, 'readwrite');
          const rows = transaction.objectStore(name).openCursor();
          rows.onsuccess = () => rows.result?.update({ ...rows.result.value, ...part });
          transaction.onabort = () => reject(transaction.error);
          transaction.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    [store, fields] as const,
  );
}
