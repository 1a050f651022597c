import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { inventedBackup, pickBackup } from '../harness/backup-at-hand';
import { CAMPAIGN_TIMEOUT_MS, campaignSize, tell } from '../harness/campaign-size';
import {
  KEEP_COPYING_CUES,
  KEEP_COPYING_POSITIONS,
  KEEP_READING,
  type KeepSaving,
} from '../harness/keep-saving';
import { killBrowser } from '../harness/kill-browser';
import { launchWithProfile } from '../harness/launch-browser';
import { between, type Random, seededRandom } from '../harness/seeded-random';
import { type StaticServer, startStaticServer } from '../harness/static-server';
import { tapButton } from '../harness/thumb';
import { lostSaves, readSaved, type WatchedSaves, watchSaves } from '../harness/watch-saves';
import { manyContents } from '../store/backup/many-contents';

const KILLS = campaignSize(4, 120);

/** Rows pile up in a profile, and readings are worked out anew: after so many kills, another. */
const KILLS_A_PROFILE = 12;

/** What is under way as the browser is killed, in turn. */
const UNDER_WAY = ['readings', 'cues', 'positions', 'an import'] as const;
type UnderWay = (typeof UNDER_WAY)[number];

const KEEPING: { readonly [W in Exclude<UnderWay, 'an import'>]: KeepSaving } = {
  readings: KEEP_READING,
  cues: KEEP_COPYING_CUES,
  positions: KEEP_COPYING_POSITIONS,
};

/** No browser that still lives takes so long for anything, however busy the machine is. */
const PATIENCE_MS = 300_000;

/** Of each kind, in a backup. */
const IMPORTED = 40;

let profile: string;
let server: StaticServer;
const freshProfile = async () => {
  profile = await mkdtemp(join(tmpdir(), 'leeway-profile-'));
};
const dropProfile = () => rm(profile, { recursive: true, force: true, maxRetries: 5 });
beforeEach(async () => {
  await freshProfile();
  server = await startStaticServer({ folder: 'dist' });
});
afterEach(async () => {
  await server.stop();
  await dropProfile();
});

/** One browser's life: what was under way at its end, and what it said was saved. */
interface Life {
  readonly underWay: UnderWay;
  readonly saves: WatchedSaves;
  /** Tells the rows that it brought in from all others. */
  readonly name: string;
}

/** Rows of a backup of which some came in and others did not; an import is whole or not at all. */
function tornImport(stored: ReadonlyMap<string, string>, { name }: Life): readonly string[] {
  const there = [...stored.keys()].filter((key) => key.includes(` ${name}-`));
  return there.length === 0 || there.length === 3 * IMPORTED ? [] : there;
}

/** The browser as it comes back, and what is gone of all that was said to be saved before. */
async function comeBack(
  earlier: readonly Life[],
  { hash, shows }: Pick<KeepSaving, 'hash' | 'shows'>,
) {
  const context = await launchWithProfile(profile);
  context.setDefaultTimeout(PATIENCE_MS);
  context.setDefaultNavigationTimeout(PATIENCE_MS);
  const saves = await watchSaves(context);
  const [page = await context.newPage()] = context.pages();
  await page.goto(`${server.url}${hash}`);
  await page.locator(shows).first().waitFor();
  const news = async () => (await page.locator('.news-bar').textContent()) ?? '';
  // A busy machine may take longer than the app waits: then it is loaded anew, as it asks for.
  const isOpen = async () => {
    if (!(await news()).includes('did not open')) return true;
    await page.reload();
    await page.locator(shows).first().waitFor();
    return false;
  };
  await expect.poll(isOpen, { timeout: PATIENCE_MS }).toBe(true);
  const stored = await readSaved(page);
  const lost = earlier.flatMap((life) => lostSaves(stored, life.saves));
  const torn = earlier.flatMap((life) => tornImport(stored, life));
  return { context, page, saves, found: [lost, torn, await news()] };
}

/** Goes on once so much was saved: so many saves, not so long a time, which hangs on the machine. */
async function keepPart(page: Page, saves: WatchedSaves, keeping: KeepSaving, random: Random) {
  await keeping.begin(page);
  const enough = between(random, 2, 30);
  await expect
    .poll(saves.keptCount, { interval: 10, timeout: PATIENCE_MS })
    .toBeGreaterThan(enough);
  // At times in the middle of a save, which is then asked for and not kept.
  const more = saves.askedCount() + Math.floor(between(random, 0, 3));
  await expect
    .poll(saves.askedCount, { interval: 1, timeout: PATIENCE_MS })
    .toBeGreaterThanOrEqual(more);
}

/** Brings in rows of which there were none, and goes on once so many of them were asked to be saved. */
async function importPart(page: Page, { askedCount }: WatchedSaves, name: string, random: Random) {
  const contents = manyContents(IMPORTED);
  const own = <T extends { readonly id: string }>(rows: readonly T[]) =>
    rows.map((row) => (/-\d+$/.test(row.id) ? { ...row, id: `${name}-${row.id}` } : row));
  const { attempts, positions } = contents;
  const cues = own(contents.cues).filter(({ id }) => id !== 'mine');
  const given = {
    cues,
    attempts: own(attempts),
    positions: own(positions),
  };
  await pickBackup(page, await inventedBackup({ ...contents, ...given }));
  const enough = between(random, 1, 3 * IMPORTED);
  await tapButton(page, 'Bring it in');
  await expect.poll(askedCount, { interval: 1, timeout: PATIENCE_MS }).toBeGreaterThan(enough);
}

/** Kills a browser in the midst of it, so and so often; says what each said was saved. */
async function killTimes(kills: number, random: Random): Promise<readonly Life[]> {
  const earlier: Life[] = [];
  for (let kill = 0; kill < kills; kill++) {
    const underWay = UNDER_WAY[kill % UNDER_WAY.length] ?? 'readings';
    const name = `kill-${kill}`;
    const keeping = underWay === 'an import' ? null : KEEPING[underWay];
    const where = keeping ?? { hash: '#kit/backup', shows: '.backup-pick' };
    const { context, page, saves, found } = await comeBack(earlier, where);
    expect([kill, ...found]).toEqual([kill, [], [], '']);
    if (keeping) await keepPart(page, saves, keeping, random);
    else await importPart(page, saves, name, random);
    await killBrowser(context, profile);
    earlier.push({ underWay, saves, name });
  }
  const { context, found } = await comeBack(earlier, KEEP_READING);
  await context.close();
  expect(found).toEqual([[], [], '']);
  return earlier;
}

it(
  `loses nothing that was said to be saved, in ${KILLS} kills of the browser at any moment`,
  async () => {
    const random = seededRandom(20261125);
    const lives: Life[] = [];
    for (let done = 0; done < KILLS; done += KILLS_A_PROFILE) {
      lives.push(...(await killTimes(Math.min(KILLS_A_PROFILE, KILLS - done), random)));
      await dropProfile();
      await freshProfile();
    }
    for (const underWay of UNDER_WAY) {
      const mine = lives.filter((life) => life.underWay === underWay);
      const saved = mine.reduce((sum, { saves }) => sum + saves.kept.size, 0);
      const asked = mine.reduce((sum, { saves }) => sum + saves.asked.size, 0);
      tell(
        `${mine.length} kills amid ${underWay}: of ${asked} rows ${saved} were said to be saved, and were there`,
      );
    }
  },
  CAMPAIGN_TIMEOUT_MS + PATIENCE_MS,
);
