import { rm } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { FORMER_MADE } from '../../src/store/parse-player';
import { OLDER_SCHEMAS, unpackOlderVersion } from '../harness/older-version';
import { type OpenApp, openApp, untilOfflineReady, untilRendered } from '../harness/open-app';
import { PATIENCE_MS } from '../harness/patience';
import { putRawRows, type RawDatabase, readRawDatabase } from '../harness/raw-database';
import { tapButton } from '../harness/thumb';
import {
  countLoads,
  lookForUpdate,
  openTab,
  untilNoWorkerComes,
  updateButton,
  versionOf,
} from '../harness/update-at-hand';
import { CURVE_ATTEMPT, LATER_ATTEMPT } from '../store/invented-attempts';

/** The layout of the present version: five steps, as `src/store/migrations.ts` has them. */
const NEWEST_SCHEMA = 5;

describe.each(OLDER_SCHEMAS)('a phone with version %d of the database', (schema) => {
  let older: string;
  let app: OpenApp;
  let second: Page;
  let before: RawDatabase;

  beforeEach(async () => {
    older = await unpackOlderVersion(schema);
    app = await openApp({
      isStored: true,
      hasWorkers: false,
      folder: older,
      basePath: '/some/where/',
      hash: '#kit/cues',
    });
    await untilOfflineReady(app.page);
    await copyCue(app.page, 'My old cue');
    if (schema > 1) await putRawRows(app.page, 'attempts', [CURVE_ATTEMPT, LATER_ATTEMPT]);
    await app.page.goto(`${app.server.url}#shot/distance`);
    await app.page.reload();
    await untilRendered(app.page);
    before = await readRawDatabase(app.page);
    second = await openTab(app.context, `${app.server.url}#kit/cues`);
  });
  afterEach(async () => {
    await app.close();
    await rm(older, { recursive: true, force: true });
  });

  it('comes to the present one with the server gone: both tabs at once, nothing lost', async () => {
    const tabs = [app.page, second];
    expect(before.version).toBe(schema);
    app.server.deploy('dist');
    await lookForUpdate(app.page);
    for (const tab of tabs) await updateButton(tab).waitFor();
    const olderScript = await versionOf(app.page);
    await app.server.stop();
    app.guard.expectServerGone();

    const counts = tabs.map(countLoads);
    await typeAndUpdate(app.page, '0.87');
    for (const tab of tabs) {
      await expect
        .poll(() => versionOf(tab).catch(() => olderScript), { timeout: PATIENCE_MS })
        .not.toBe(olderScript);
      await untilRendered(tab);
    }
    for (const tab of tabs) await untilNoWorkerComes(tab);
    expect(counts.map(({ loads }) => loads)).toEqual([1, 1]);
    expect(await versionOf(second)).toBe(await versionOf(app.page));

    // The panel that was open is open again, with what had been typed a moment before.
    expect(await distanceField(app.page).inputValue()).toBe('0.87');
    expect(await second.getByText('My old cue').count()).toBeGreaterThan(0);
    await expectNothingLost(await readRawDatabase(app.page));
    expect(app.guard.problems).toEqual([]);
  });

  async function expectNothingLost(after: RawDatabase) {
    expect(after.version).toBe(NEWEST_SCHEMA);
    for (const shelf of ['cues', 'cloths', 'balls', 'tables']) {
      expect(after.stores[shelf]).toMatchObject(before.stores[shelf] ?? ['missing']);
    }
    expect(after.stores.attempts).toEqual(before.stores.attempts ?? []);
    const positions = before.stores.positions?.map(({ intent, ...row }) => ({
      goal: { kind: 'pot', ...(intent as object), via: [] },
      ...row,
    }));
    if (positions) expect(after.stores.positions).toEqual(positions);
    // The shot is changed by the test, and with it the list of recent ones.
    const [was = { missing: true }] = before.stores.desk ?? [];
    const { shot: _, recentShots: __, player: ___, ...desk } = was;
    const [player] = after.stores.players ?? [];
    expect(player).toMatchObject({ madeOf10: FORMER_MADE.club });
    expect(after.stores.desk).toMatchObject([{ ...desk, playerId: player?.id }]);

    const [former, ...others] = after.stores['former-contents'] ?? [];
    expect(others).toEqual([]);
    expect(former).toMatchObject({ reason: 'upgrade', schema });
    const kept = former?.rows as Record<string, { value: unknown }[]>;
    const keptCues = kept.cues?.map(({ value }) => value);
    expect(keptCues).toEqual(before.stores.cues);
    expect(kept.attempts?.map(({ value }) => value)).toEqual(before.stores.attempts);
  }
});

const distanceField = (page: Page) => page.getByRole('textbox', { name: 'Distance' });

/** What a player does to have a cue of their own. */
async function copyCue(page: Page, name: string) {
  await tapButton(page, 'Copy House cue');
  const ratio = page.getByRole('textbox', { name: /^Ball over end mass/ });
  await ratio.fill('41');
  await ratio.blur();
  await page.getByRole('textbox', { name: 'Name' }).fill(name);
  await page.getByRole('textbox', { name: 'Name' }).blur();
  await tapButton(page, 'Play with this one');
  await expect
    .poll(async () => (await readRawDatabase(page)).stores.cues)
    .toContainEqual(expect.objectContaining({ name, massRatio: 41 }));
}

/** Changes the shot and takes the update in one breath, before anything can have been saved. */
async function typeAndUpdate(page: Page, distance: string) {
  const button = await updateButton(page).elementHandle();
  await distanceField(page).evaluate(
    (field, [typed, update]) => {
      (field as HTMLInputElement).value = typed;
      field.dispatchEvent(new InputEvent('input', { bubbles: true }));
      (update as HTMLElement).click();
    },
    [distance, button] as const,
  );
}
