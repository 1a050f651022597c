import { afterEach, beforeEach, expect, it } from 'vitest';
import { findDigest } from '../../src/store/backup/backup-format';
import { type ParsedBackup, parseBackup } from '../../src/store/backup/parse-backup';
import { planImport } from '../../src/store/backup/plan-import';
import type { Contents } from '../../src/store/contents';
import { createStore } from '../../src/store/create-store';
import type { StorePort } from '../../src/store/store-port';
import { backupFaultWords } from '../../src/words/store-words';
import { CAMPAIGN_TIMEOUT_MS, campaignSize } from '../harness/campaign-size';
import {
  type Damage,
  FORGED_LINES,
  LINE_DAMAGES,
  pick,
  TEXT_DAMAGES,
} from '../harness/damage-text';
import { fetchMemory } from '../harness/fetch-memory';
import { type Random, seededRandom } from '../harness/seeded-random';
import { contentsOf, fill, importText, textOf } from '../store/backup/import-text';
import { CONTENTS, MY_CUE } from '../store/backup/invented-contents';
import { sealed } from '../store/backup/resealed';
import { newDevice, newDraftStorage } from '../store/new-device';

const FILES = campaignSize(60, 2000);

let store: StorePort;
let text: string;
let before: Contents;
let textBefore: string;

/** A device with contents of its own, and the backup of another. */
beforeEach(async () => {
  newDevice();
  store = createStore({ fetchMemory, findDraftStorage: newDraftStorage });
  await store.loadAll();
  await fill(store, CONTENTS);
  await store.loadAll();
  text = await textOf(store);
  await store.put('cues', { ...MY_CUE, id: 'here', name: 'Kept here' });
  await store.delete('attempts', CONTENTS.attempts[0]?.id ?? '');
  before = await contentsOf(store);
  textBefore = await textOf(store);
});
afterEach(() => {
  expect(Reflect.get({}, 'isForged')).toBeUndefined();
});

const onLines =
  (damage: Damage<readonly string[]>): Damage<string> =>
  (whole, random) =>
    `${damage(whole.split('\n').slice(0, -1), random).join('\n')}\n`;

const DAMAGES = new Map([
  ...Object.entries(TEXT_DAMAGES),
  ...Object.entries(LINE_DAMAGES).map(([name, damage]) => [name, onLines(damage)] as const),
]);

/** Checks a file as a phone with or without SHA-256 would, and says how it went. */
async function parse(damaged: string, random: Random): Promise<ParsedBackup> {
  const parsed = await parseBackup(damaged, random() < 0.5 ? findDigest() : null);
  if (parsed.ok) return parsed;
  expect(parsed.line).toBeGreaterThanOrEqual(1);
  expect(parsed.line).toBeLessThanOrEqual(Math.max(1, damaged.split('\n').length));
  expect(backupFaultWords(parsed.fault)).toMatch(/^[A-Z].{10,70}\.$/);
  expect(await textOf(store)).toBe(textBefore);
  return parsed;
}

it(
  `refuses ${FILES} damaged files by a line and leaves everything alone, or finds nothing amiss`,
  async () => {
    const random = seededRandom(20_260_801);
    let refused = 0;
    for (let file = 0; file < FILES; file += 1) {
      const [name, damage] = pick(random, [...DAMAGES]);
      const parsed = await parse(damage(text, random), random);
      if (!parsed.ok) {
        refused += 1;
        continue;
      }
      expect(parsed.backup.contents, name).toEqual(CONTENTS);
      const plan = planImport(await contentsOf(store), parsed.backup, 'replace');
      expect(await store.importBackup(plan)).toEqual({ ok: true });
      expect(await textOf(store), name).toBe(text);
      expect(await store.undoImport()).toEqual({ ok: true });
      expect(await textOf(store)).toBe(textBefore);
    }
    expect(refused).toBeGreaterThan(FILES / 2);
    expect(refused).toBeLessThan(FILES * 0.9);
  },
  CAMPAIGN_TIMEOUT_MS,
);

/** A backup with something false in it, every checksum made to fit. */
async function forge(whole: string, random: Random): Promise<string> {
  const open = whole
    .split('\n')
    .slice(0, -2)
    .map((line) => line.replace(/,"crc":"[0-9a-f]{8}"\}$/, ''));
  if (random() < 0.2) {
    const moved = pick(random, Object.values(LINE_DAMAGES))(open, random);
    const counted = (moved[0] ?? '').replace(/"lines":\d+/, `"lines":${moved.length - 1}`);
    return await sealed(moved.with(0, counted));
  }
  const at = Math.floor(random() * open.length);
  const damage = pick(random, Object.values(FORGED_LINES));
  return await sealed(open.with(at, damage(open[at] ?? '', random)));
}

it(
  `refuses ${FILES} forged files by a line and leaves everything alone, or mends what it takes`,
  async () => {
    const random = seededRandom(20_260_802);
    let refused = 0;
    for (let file = 0; file < FILES; file += 1) {
      const forged = await forge(text, random);
      const parsed = await parse(forged, random);
      if (!parsed.ok) {
        refused += 1;
        continue;
      }
      const mode = pick(random, ['merge', 'replace'] as const);
      const plan = planImport(await contentsOf(store), parsed.backup, mode);
      expect(await store.importBackup(plan), forged).toEqual({ ok: true });
      const { repairs, quarantined } = await store.loadAll();
      expect([...repairs, ...quarantined], forged).toEqual([]);
      const textAfter = await textOf(store);
      expect(await importText(store, textAfter, 'merge')).toEqual({ ok: true });
      expect(await textOf(store), forged).toBe(textAfter);
      await fill(store, before);
      expect(await textOf(store)).toBe(textBefore);
    }
    expect(refused).toBeGreaterThan(FILES * 0.2);
    expect(refused).toBeLessThan(FILES * 0.8);
  },
  CAMPAIGN_TIMEOUT_MS,
);
