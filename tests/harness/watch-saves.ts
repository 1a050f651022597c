import type { BrowserContext, Page } from 'playwright-core';

/** What the app was seen to save of the attempts, each version of each by its place in order. */
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
  await context.exposeBinding('noteAsked', (_, id: string, text: string) => {
    asked.set(id, [...(asked.get(id) ?? []), text]);
    asks += 1;
  });
  await context.exposeBinding('noteKept', (_, id: string, text: string) => {
    kept.set(id, asked.get(id)?.lastIndexOf(text) ?? -1);
    keeps += 1;
  });
  await context.addInitScript(() => {
    const { put } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.put = function (row, key) {
      if (this.name === 'attempts') {
        const text = JSON.stringify(row);
        const tell = (name: string) => Reflect.get(window, name)(row.id, text);
        tell('noteAsked');
        this.transaction.addEventListener('complete', () => tell('noteKept'));
      }
      return key === undefined ? put.call(this, row) : put.call(this, row, key);
    };
  });
  return { asked, kept, askedCount: () => asks, keptCount: () => keeps };
}

/** Attempts that are gone, or as they were before the version that was said to be saved. */
export async function lostSaves(page: Page, { asked, kept }: WatchedSaves): Promise<string[]> {
  const rows = await page.evaluate(async () => {
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const opening = indexedDB.open('leeway');
      opening.onsuccess = () => resolve(opening.result);
      opening.onerror = () => reject(opening.error);
    });
    const all = await new Promise<{ id: string }[]>((resolve) => {
      const reading = database.transaction('attempts').objectStore('attempts').getAll();
      reading.onsuccess = () => resolve(reading.result);
    });
    database.close();
    return all.map((row) => [row.id, JSON.stringify(row)] as const);
  });
  const stored = new Map(rows);
  const isLost = (id: string, last: number) => {
    const text = stored.get(id);
    const older = (asked.get(id) ?? []).slice(0, last);
    return text === undefined || older.includes(text);
  };
  return [...kept].filter(([id, last]) => isLost(id, last)).map(([id]) => id);
}

/** Takes readings of the line trial in the page, one after another, as fast as the page follows. */
export async function keepReading(page: Page): Promise<void> {
  await page.evaluate(() => {
    const all = <E extends Element>(selector: string) => [
      ...document.querySelectorAll<E & HTMLElement>(selector),
    ];
    const named = (name: string) =>
      all('button').find(({ textContent }) => textContent?.trim().endsWith(name));
    // A length that the trial takes: one it refuses would stay there for ever.
    const keys = ['left', '1', '2', 'Enter'];
    let pressed = 0;
    const figure = () => {
      pressed += 1;
      return named(keys[(pressed - 1) % keys.length] ?? '');
    };
    setInterval(() => {
      const title = document.querySelector('h1')?.textContent;
      const isOpen = document.querySelector('.attempt') !== null;
      const trial = all('.trial-row').find(({ textContent }) => textContent?.startsWith('Line'));
      const next = document.querySelector<HTMLElement>('.attempt-control > .button-main');
      if (title === 'Taken down') named('To all trials')?.click();
      else if (!isOpen) (trial ?? named('Play it'))?.click();
      else if (title === 'Where did it touch?') figure()?.click();
      else next?.click();
    }, 15);
  });
}
