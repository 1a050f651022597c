import type { Page } from 'playwright-core';
import { beginTrial, stepTitle, tapFigure } from './measure-at-table';
import { tapButton } from './thumb';

/** Takes a whole reading of the line trial. */
export async function takeReading(page: Page, figure: string): Promise<void> {
  await beginTrial(page, 'Line');
  await tapButton(page, 'It is placed');
  await tapButton(page, 'Played');
  await tapFigure(page, figure, 'left');
  const title = await stepTitle(page);
  if (title !== 'Taken down') throw new Error(`It is not taken down, but at ${title}`);
  await tapButton(page, 'To all trials');
}

/** The readings that the database itself holds. */
export async function readingsKept(page: Page): Promise<readonly number[]> {
  return await page.evaluate(async () => {
    const database = await new Promise<IDBDatabase>((resolve) => {
      const opening = indexedDB.open('leeway');
      opening.onsuccess = () => resolve(opening.result);
    });
    if (!database.objectStoreNames.contains('attempts')) return [];
    const rows = await new Promise<{ readings: { landingM: number } }[]>((resolve) => {
      const reading = database.transaction('attempts').objectStore('attempts').getAll();
      reading.onsuccess = () => resolve(reading.result);
    });
    database.close();
    return rows.map(({ readings }) => Math.round(Math.abs(readings.landingM) * 100)).sort();
  });
}
