import type { Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { runAxe } from '../harness/axe';
import {
  bringIn,
  inventedBackup,
  pickBackup,
  saveBackup,
  setFile,
} from '../harness/backup-at-hand';
import { faultsAtAllSizes } from '../harness/layout-faults';
import { type OpenApp, openApp, untilRendered } from '../harness/open-app';
import { settle } from '../harness/read-shot';
import { THEMES } from '../harness/screens';
import { tapButton } from '../harness/thumb';

let app: OpenApp;
beforeEach(async () => {
  app = await openApp({ hash: '#kit/backup', hasWorkers: false });
});
afterEach(async () => {
  expect(app.guard.problems).toEqual([]);
  await app.close();
});

describe('without a finger', () => {
  const focused = () => app.page.evaluate(() => document.activeElement?.textContent ?? '');
  async function tabTo(name: RegExp): Promise<void> {
    for (let i = 0; i < 40; i++) {
      if (name.test(await focused())) return;
      await app.page.keyboard.press('Tab');
    }
    throw new Error(`Tab never came to ${name}`);
  }

  it('saves, looks, chooses, brings in and undoes', async () => {
    const { page } = app;
    // Something of one's own, to choose what becomes of it.
    await page.goto(`${app.server.url}#kit/cues/demo-cue-house`);
    await untilRendered(page);
    await tapButton(page, 'Tip diameter: less');
    await page.goto(`${app.server.url}#kit/backup`);
    await untilRendered(page);
    const coming = page.waitForEvent('download');
    await tabTo(/^Save a backup$/);
    await page.keyboard.press('Enter');
    await coming;
    const choosing = page.waitForEvent('filechooser');
    await tabTo(/^Bring a backup in/);
    await page.keyboard.press('Enter');
    await setFile(await choosing, await inventedBackup());
    await page.locator('.backup-plan').waitFor();
    await tabTo(/^Replace it$/);
    await page.keyboard.press('Space');
    await tabTo(/^Cues: /);
    await page.keyboard.press('Enter');
    await page.getByText(/^Added: My “good” cue/).waitFor();
    await tabTo(/^Bring it in$/);
    const loading = page.waitForEvent('load');
    await page.keyboard.press('Enter');
    await loading;
    await page.locator('.undo-delete button').waitFor();
    await tabTo(/Undo$/);
    const again = page.waitForEvent('load');
    await page.keyboard.press('Enter');
    await again;
    await page.locator('.undo-delete', { hasText: 'was undone' }).waitFor();
    expect(await page.getByRole('button', { name: /Bring it in again$/ }).count()).toBe(1);
  });
});

describe.each(THEMES)('in the %s theme', (theme) => {
  it('axe finds nothing beside a plan, a refusal and an undo', async () => {
    const { page } = app;
    const found: string[] = [];
    const look = async () => {
      await page.evaluate((name) => {
        document.documentElement.dataset.theme = name;
      }, theme);
      await settle(page);
      found.push(...(await runAxe(page)).found);
    };
    await saveBackup(page);
    await pickBackup(page, await inventedBackup());
    await page.locator('.backup-changes summary').first().click();
    await look();
    await bringIn(page);
    await pickBackup(page, { name: 'notes.txt', text: 'Invented notes.' });
    await look();
    expect(found).toEqual([]);
  });
});

it('fits every screen, with all in it large enough for a thumb', async () => {
  await bringInInvented(app.page);
  expect(await faultsAtAllSizes(app.page)).toEqual([]);
});

/** Undo on the screen, and a plan open to its names. */
async function bringInInvented(page: Page): Promise<void> {
  await pickBackup(page, await inventedBackup());
  await bringIn(page);
  await pickBackup(page, await inventedBackup());
  await page.locator('.backup-changes summary').first().click();
}
