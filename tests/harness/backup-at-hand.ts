import { readFile } from 'node:fs/promises';
import type { FileChooser, Page } from 'playwright-core';
import { findDigest } from '../../src/store/backup/backup-format';
import { writeBackup } from '../../src/store/backup/write-backup';
import type { Contents } from '../../src/store/contents';
import { CONTENTS } from '../store/backup/invented-contents';
import { readRawDatabase } from './raw-database';
import { settle } from './read-shot';
import { tapButton } from './thumb';

/** A file as a person has it on their phone. */
export interface FileAtHand {
  readonly name: string;
  readonly text: string;
}

/** Invented. */
const SAVED_AT_MS = 1_790_000_100_000;

/** A backup of what a player may have after some weeks. */
export async function inventedBackup(contents: Contents = CONTENTS): Promise<FileAtHand> {
  const text = await writeBackup(contents, SAVED_AT_MS, findDigest());
  return { name: 'leeway-backup-2026-09-21.json', text };
}

/** Saves a backup on the Backup page, and gives the file that came of it. */
export async function saveBackup(page: Page): Promise<FileAtHand> {
  await page.locator('.backup-contents', { hasText: 'In it' }).waitFor();
  const coming = page.waitForEvent('download');
  await tapButton(page, 'Save a backup');
  const download = await coming;
  return {
    name: download.suggestedFilename(),
    text: await readFile(await download.path(), 'utf8'),
  };
}

/** Picks a file to be brought in, and waits until there is something to say of it. */
export async function pickBackup(page: Page, file: FileAtHand): Promise<void> {
  await untilShotNoted(page);
  const choosing = page.waitForEvent('filechooser');
  await tapButton(page, /^Bring a backup in/);
  await setFile(await choosing, file);
  await page.getByText(/is whole|is not brought in/).waitFor();
}

/**
 * Waits until the shot of a visit is among the recent ones. Noted only after a plan was shown, it is a
 * change that nobody agreed to, and nothing comes in.
 */
export async function untilShotNoted(page: Page): Promise<void> {
  const isNoted = async () => {
    const { desk = [] } = (await readRawDatabase(page)).stores;
    return desk.some((row) => /"recentShots":\[\{/.test(JSON.stringify(row)));
  };
  while (!(await isNoted())) await settle(page);
}

/** Gives a page that asks for a file this one. */
export async function setFile(chooser: FileChooser, { name, text }: FileAtHand): Promise<void> {
  await chooser.setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

/** Agrees to what is planned, and waits until the page has come back. */
export async function bringIn(page: Page): Promise<void> {
  const loading = page.waitForEvent('load');
  await tapButton(page, 'Bring it in');
  await loading;
  await page.locator('.undo-delete', { hasText: 'Brought in a backup' }).waitFor();
}
