import { existsSync, readdirSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ENGINES, type EnginePage } from '../harness/engines/engine-page';
import { eventually, fill, tapButton, textOf, waitFor } from '../harness/engines/engine-thumb';
import { type EngineApp, openInEngine } from '../harness/engines/open-engine';
import { openTile, readFigures } from '../harness/engines/read-figures';
import { untilDeskKept, untilKept } from '../harness/until-kept';

describe.each(ENGINES)('a backup in %s', (engine) => {
  let app: EngineApp;
  let page: EnginePage;
  beforeAll(async () => {
    app = await openInEngine(engine);
    page = app.page;
  });
  afterAll(async () => {
    await app?.close();
  });

  /** The file that came of the tap, whole. */
  async function save(): Promise<string> {
    await eventually(() => textOf(page, '.backup-contents')).toMatch(/In it/);
    await tapButton(page, 'Save a backup');
    await eventually(() => textOf(page, '.backup-part output')).toMatch(/^Saved as leeway-backup-/);
    const [, name = ''] =
      /Saved as (\S+\.json)/.exec(await textOf(page, '.backup-part output')) ?? [];
    const path = join(page.downloads, name);
    await eventually(() => existsSync(path) && readdirSync(page.downloads).includes(name)).toBe(
      true,
    );
    await eventually(async () => (await readFile(path, 'utf8')).trimEnd().endsWith('}')).toBe(true);
    return path;
  }

  /** All databases of the site are gone, as after the phone cleared it while the app was shut. */
  const wipe = async () => {
    await page.open(new URL('favicon.svg', app.server.url).href);
    await page.evaluate(async () => {
      for (const { name = '' } of await indexedDB.databases()) {
        await new Promise<void>((resolve, reject) => {
          const deleting = indexedDB.deleteDatabase(name);
          deleting.onsuccess = () => resolve();
          deleting.onerror = () => reject(deleting.error);
        });
      }
    });
  };

  it('is saved to a file, and brings everything back after all was cleared', async () => {
    const worked = await readFigures(page);
    await openTile(page, 'speed');
    await fill(page, 'Speed off the tip', '2.6');
    await tapButton(page, 'Close');
    const before = await readFigures(page);
    expect(before).not.toEqual(worked);
    await untilDeskKept(page, { shot: { speedMps: 2.6 } });
    await app.goTo('#kit/backup');
    const file = await save();
    // The last that a shot leaves to be saved: a page that goes in the middle of it may keep the
    // database shut to the next one in this WebKit.
    const recent = expect.arrayContaining([expect.objectContaining({ speedMps: 2.6 })]);
    await untilKept(page, 'desk', { recentShots: recent });

    await wipe();
    await app.goTo('#shot');
    await eventually(() => readFigures(page)).toEqual(worked);
    await app.goTo('#kit/backup');
    await page.pickFile(file, () => tapButton(page, /^Bring a backup in/));
    await eventually(() => textOf(page, '[aria-labelledby="backup-in"] output')).toMatch(
      /is whole/,
    );
    await tapButton(page, 'Bring it in');
    await waitFor(page, { css: '.undo-delete', name: /Brought in a backup/ });
    await app.goTo('#shot');
    await eventually(() => readFigures(page)).toEqual(before);
    expect(await page.problems()).toEqual([]);
  });
});
