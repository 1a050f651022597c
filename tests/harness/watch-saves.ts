import type { BrowserContext, Page } from 'playwright-core';

/** Where a player's own rows lie. */
const STORES = ['cues', 'attempts', 'positions'] as const;

/** What the app was seen to save, each version of each row by its place in order; rows go by store and id. */
export interface WatchedSaves {
  /** Versions of a row that were asked to be saved, the oldest first. */
  readonly asked: ReadonlyMap<string, readonly string[]>;
  /** The version that the browser last said was saved; the app's promise hangs on the same event. */
  readonly kept: ReadonlyMap<string, number>;
  /** How often it was asked to save, and how often it said that it had. */
  askedCount(): number;
  keptCount(): number;
}

/** Watches from now on every page of a context. */
export async function watchSaves(context: BrowserContext): Promise<WatchedSaves> {
  const asked = new Map<string, string[]>();
  const kept = new Map<string, number>();
  let [asks, keeps] = [0, 0];
  await context.exposeBinding('noteAsked', (_, key: string, text: string) => {
    asked.set(key, [...(asked.get(key) ?? []), text]);
    asks += 1;
  });
  await context.exposeBinding('noteKept', (_, key: string, text: string) => {
    kept.set(key, asked.get(key)?.lastIndexOf(text) ?? -1);
    keeps += 1;
  });
  await context.addInitScript((stores: readonly string[]) => {
    const { put } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.put = function (row, key) {
      if (stores.includes(this.name)) {
        const text = JSON.stringify(row);
        const tell = (name: string) => Reflect.get(window, name)(`${this.name} ${row.id}`, text);
        tell('noteAsked');
        this.transaction.addEventListener('complete', () => tell('noteKept'));
      }
      return key === undefined ? put.call(this, row) : put.call(this, row, key);
    };
  }, STORES);
  return { asked, kept, askedCount: () => asks, keptCount: () => keeps };
}

/** All that is kept of them now, by store and id. */
export async function readSaved(page: Page): Promise<ReadonlyMap<string, string>> {
  const rows = await page.evaluate(async (stores) => {
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const opening = indexedDB.open('leeway');
      opening.onsuccess = () => resolve(opening.result);
      opening.onerror = () => reject(opening.error);
    });
    const transaction = database.transaction(stores);
    const all = stores.map(
      (name) =>
        new Promise<(readonly [string, string])[]>((resolve) => {
          const reading = transaction.objectStore(name).getAll();
          reading.onsuccess = () => {
            const found: { id: string }[] = reading.result;
            resolve(found.map((row) => [`${name} ${row.id}`, JSON.stringify(row)]));
          };
        }),
    );
    const found = await Promise.all(all);
    database.close();
    return found.flat();
  }, STORES);
  return new Map(rows);
}

/** Rows that are gone, or as they were before the version that was said to be saved. */
export function lostSaves(
  stored: ReadonlyMap<string, string>,
  { asked, kept }: WatchedSaves,
): readonly string[] {
  const isLost = (key: string, last: number) => {
    const text = stored.get(key);
    const versions = asked.get(key) ?? [];
    // A row may be saved again as it was.
    const isOlder = (version: string) => versions.slice(0, last).includes(version);
    return text === undefined || (text !== versions[last] && isOlder(text));
  };
  return [...kept].filter(([key, last]) => isLost(key, last)).map(([key]) => key);
}
