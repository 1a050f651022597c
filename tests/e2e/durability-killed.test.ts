import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { CAMPAIGN_TIMEOUT_MS, campaignSize, tell } from '../harness/campaign-size';
import { killBrowser } from '../harness/kill-browser';
import { launchWithProfile } from '../harness/launch-browser';
import { between, type Random, seededRandom } from '../harness/seeded-random';
import { type StaticServer, startStaticServer } from '../harness/static-server';
import { keepReading, lostSaves, type WatchedSaves, watchSaves } from '../harness/watch-saves';

const KILLS = campaignSize(4, 100);

/** Readings pile up in a profile, and each is worked out anew: after so many kills, another. */
const KILLS_A_PROFILE = 10;

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

/** The browser as it comes back, and what is gone of all that was said to be saved before. */
async function comeBack(earlier: readonly WatchedSaves[]) {
  const context = await launchWithProfile(profile);
  const saves = await watchSaves(context);
  const [page = await context.newPage()] = context.pages();
  await page.goto(`${server.url}#kit/measure`);
  await page.locator('.trial-row').first().waitFor();
  const lost: string[] = [];
  for (const before of earlier) lost.push(...(await lostSaves(page, before)));
  const news = (await page.locator('.news-bar').textContent()) ?? '';
  return { context, page, saves, found: [lost, news] };
}

/** A life of a profile: so many kills while readings are taken; says what was saved in it. */
async function killTimes(kills: number, random: Random): Promise<readonly WatchedSaves[]> {
  const earlier: WatchedSaves[] = [];
  for (let kill = 0; kill < kills; kill++) {
    const { context, page, saves, found } = await comeBack(earlier);
    expect([kill, ...found]).toEqual([kill, [], '']);
    await keepReading(page);
    // So many saves, not so long a time: how fast they come hangs on the machine.
    const enough = between(random, 2, 30);
    await expect.poll(saves.keptCount, { interval: 10, timeout: 30_000 }).toBeGreaterThan(enough);
    // At times in the middle of a save, which is then asked for and not kept.
    const more = saves.askedCount() + Math.floor(between(random, 0, 3));
    await expect
      .poll(saves.askedCount, { interval: 1, timeout: 30_000 })
      .toBeGreaterThanOrEqual(more);
    await killBrowser(context, profile);
    earlier.push(saves);
  }
  const { context, found } = await comeBack(earlier);
  await context.close();
  expect(found).toEqual([[], '']);
  return earlier;
}

it(
  `loses nothing that was said to be saved, in ${KILLS} kills of the browser at any moment`,
  async () => {
    const random = seededRandom(20261125);
    const lives: WatchedSaves[] = [];
    for (let done = 0; done < KILLS; done += KILLS_A_PROFILE) {
      lives.push(...(await killTimes(Math.min(KILLS_A_PROFILE, KILLS - done), random)));
      await dropProfile();
      await freshProfile();
    }
    const saves = lives.reduce((sum, { keptCount }) => sum + keptCount(), 0);
    const shots = lives.reduce((sum, { kept }) => sum + kept.size, 0);
    tell(`${KILLS} kills: the last of ${saves} saves of ${shots} shots were there`);
  },
  CAMPAIGN_TIMEOUT_MS,
);
