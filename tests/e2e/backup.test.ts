import type { Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  bringIn,
  inventedBackup,
  pickBackup,
  saveBackup,
  untilShotNoted,
} from '../harness/backup-at-hand';
import { type OpenApp, openApp, untilRendered } from '../harness/open-app';
import { readAnswer, readTiles, settle } from '../harness/read-shot';
import { openEngineNumbers, openTile, tapAction, tapButton } from '../harness/thumb';
import { untilKept } from '../harness/until-kept';

let app: OpenApp;
beforeEach(async () => {
  app = await openApp({ hasWorkers: false });
});
afterEach(async () => {
  expect(app.guard.problems).toEqual([]);
  await app.close();
});

const goTo = async (hash: string) => {
  await app.page.goto(`${app.server.url}#${hash}`);
  await untilRendered(app.page);
  await settle(app.page);
};
const text = async (selector: string) =>
  (await app.page.locator(selector).first().textContent()) ?? '';
const cueNames = async () => {
  await goTo('kit/cues');
  return await app.page.locator('.record-choose b').allInnerTexts();
};
const answerNow = async () => {
  await goTo('shot');
  return { answer: await readAnswer(app.page), tiles: await readTiles(app.page) };
};

/** Copies a cue, gives it a name, and plays with it. */
async function makeCue(page: Page, name: string, ratio: string): Promise<void> {
  await goTo('kit/cues');
  await tapAction(page, 'Copy', 'House cue');
  await openEngineNumbers(page);
  await page.getByRole('textbox', { name: /^Ball over end mass/ }).fill(ratio);
  await page.getByRole('textbox', { name: 'Name' }).fill(name);
  await page.getByRole('textbox', { name: 'Name' }).blur();
  await tapButton(page, 'Play with this one');
  await expect.poll(() => page.getByText('Not in play.').count()).toBe(0);
}

async function setSpeed(page: Page, speed: string): Promise<void> {
  await goTo('shot');
  await openTile(page, 'speed');
  await page.getByRole('textbox', { name: 'Speed off the tip' }).fill(speed);
  await settle(page);
}

/** All that the browser keeps for the site is gone, as after the phone cleared it. */
async function wipe(page: Page): Promise<void> {
  const session = await app.context.newCDPSession(page);
  await session.send('Storage.clearDataForOrigin', {
    origin: app.server.origin,
    storageTypes: 'indexeddb,local_storage',
  });
  await session.detach();
  await page.reload();
  await untilRendered(page);
}

async function undo(page: Page, name: RegExp): Promise<void> {
  const loading = page.waitForEvent('load');
  await tapButton(page, name);
  await loading;
  await untilRendered(page);
}

describe('a backup', () => {
  it('brings everything back after the phone cleared it, to the same answer', async () => {
    const { page } = app;
    await makeCue(page, 'My cue', '40');
    await setSpeed(page, '2.6');
    const before = await answerNow();
    await goTo('kit/backup');
    const file = await saveBackup(page);
    expect(file.name).toMatch(/^leeway-backup-\d{4}-\d\d-\d\d\.json$/);
    expect(await text('.backup-part output')).toContain(`Saved as ${file.name}`);
    expect(await text('.backup-contents')).toContain('5 cues');

    await wipe(page);
    expect((await answerNow()).answer).not.toEqual(before.answer);
    await goTo('kit/backup');
    await pickBackup(page, file);
    // Nothing is here to be added to, so nobody is asked.
    expect(await page.getByRole('button', { name: 'Replace it' }).count()).toBe(0);
    await bringIn(page);
    expect(await answerNow()).toEqual(before);
    expect(await cueNames()).toContain('My cue');
  });

  it('holds what was changed just before it was saved', async () => {
    const { page } = app;
    await goTo('kit/preferences');
    await tapButton(page, 'km/h');
    await tapButton(page, /Back/);
    await tapButton(page, 'Backup');
    const { text: saved } = await saveBackup(page);
    expect(saved).toContain('"speedUnit":"kmh"');
  });

  it('adds to what is here, and leaves the shot as it stands', async () => {
    const { page } = app;
    await makeCue(page, 'My own cue', '40');
    const before = await answerNow();
    await goTo('kit/backup');
    await pickBackup(page, await inventedBackup());
    const rows = await page.locator('.backup-changes li').allTextContents();
    expect(rows[0]).toContain('Cues: 1 added, 5 left as before');
    expect(rows.join(' ')).not.toContain('removed');
    await bringIn(page);
    expect(await answerNow()).toEqual(before);
    expect(await cueNames()).toEqual(
      expect.arrayContaining(['My own cue', 'My “good” cue – №1', 'House cue']),
    );
  });

  it('replaces what is here, and says what would be gone, by name', async () => {
    const { page } = app;
    await makeCue(page, 'My own cue', '40');
    await goTo('kit/backup');
    await pickBackup(page, await inventedBackup());
    await tapButton(page, 'Replace it');
    expect(await text('.backup-changes li')).toContain('1 added, 1 removed, 4 left as before');
    await page.locator('.backup-changes summary').first().click();
    await page.getByText('Removed: My own cue.').waitFor();
    await bringIn(page);
    expect(await cueNames()).not.toContain('My own cue');
    await goTo('shot');
    expect(await text('.kit-strip')).toContain('My “good” cue – №1');
  });

  it('can be undone, and that too', async () => {
    const { page } = app;
    await makeCue(page, 'My own cue', '40');
    const before = await answerNow();
    await goTo('kit/backup');
    await pickBackup(page, await inventedBackup());
    await tapButton(page, 'Replace it');
    await bringIn(page);
    const broughtIn = await answerNow();
    expect(broughtIn).not.toEqual(before);
    await goTo('kit/backup');
    await undo(page, /Undo$/);
    await expect.poll(() => text('.undo-delete')).toContain('was undone');
    expect(await answerNow()).toEqual(before);
    expect(await cueNames()).toContain('My own cue');
    await goTo('kit/backup');
    await undo(page, /Bring it in again$/);
    await expect.poll(() => text('.undo-delete')).toContain('Brought in a backup');
    expect(await answerNow()).toEqual(broughtIn);
  });

  it('is not overwritten by a change made while it comes in', async () => {
    const { page } = app;
    await goTo('kit/preferences');
    // Clicked as the first store is cleared, the button still changes the desk, which is saved as the
    // page goes away.
    await page.evaluate(() => {
      const button = [...document.querySelectorAll('button')].find(
        ({ textContent }) => textContent === 'km/h',
      );
      const { clear } = IDBObjectStore.prototype;
      IDBObjectStore.prototype.clear = function () {
        button?.click();
        return clear.call(this);
      };
    });
    await tapButton(page, /Back/);
    await tapButton(page, 'Backup');
    await pickBackup(page, await inventedBackup());
    await bringIn(page);
    await goTo('shot');
    expect(await text('.kit-strip')).toContain('My “good” cue – №1');
    expect((await readTiles(page)).speed).toContain('m/s');
  });
});

describe('a file that is no whole backup', () => {
  it('is refused with the line that is wrong, and nothing is changed', async () => {
    const { page } = app;
    await goTo('kit/backup');
    // By then the shot is noted among the recent ones, and saved.
    await untilKept(page, 'desk', { recentShots: [expect.anything()] });
    const whole = await saveBackup(page);
    const lines = whole.text.split('\n');
    lines[4] = (lines[4] ?? '').replace('"name":"', '"name":"x');
    await pickBackup(page, { name: 'damaged.json', text: lines.join('\n') });
    expect(await text('[aria-labelledby="backup-in"] output')).toMatch(
      /^damaged\.json is not brought in\. Line 5: .*Nothing was changed\.$/,
    );
    expect(await page.getByRole('button', { name: 'Bring it in' }).count()).toBe(0);
    await page.reload();
    await untilRendered(page);
    const after = await saveBackup(page);
    const rowsOf = (file: string) => file.split('\n').slice(1, -2);
    expect(rowsOf(after.text)).toEqual(rowsOf(whole.text));
    expect(await page.locator('.undo-delete button').count()).toBe(0);
  });

  it('is told apart from one that holds nothing new', async () => {
    const { page } = app;
    await goTo('kit/backup');
    await untilShotNoted(page);
    await pickBackup(page, await saveBackup(page));
    expect(await text('[aria-labelledby="backup-in"] output')).toContain('Nothing would change');
    expect(await page.getByRole('button', { name: 'Bring it in' }).count()).toBe(0);
    await tapButton(page, 'Leave it');
    await page.locator('.backup-plan').waitFor({ state: 'detached' });
  });
});
